package roundwright.group.messages;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.commonmark.parser.Parser;
import roundwright.group.Expectations;
import roundwright.notation.Terms;
import roundwright.pattern.GrowingPattern;
import roundwright.pattern.PatternReader;

/**
 * Counts read out of a hundred thousand lines of a chat and of a list, in processor time. The yardstick is commonmark-java on the same text
 * in the same run: a hand-written parser of another text language, as for the reader of patterns; every line here is read against a pattern
 * and a group besides, so that it says how machine and moment are, not what can be reached.
 *
 * <p>{@code java -cp target/roundwright.jar roundwright.group.messages.MessagesSpeed}
 */
public final class MessagesSpeed {
    private static final int LINES = 100_000;
    private static final List<String> STUDENTS = List.of(
            "Alma", "Bertram", "Cosima", "Dunstan", "Elspeth", "Fergus", "Gudrun", "Hesper", "Ianthe", "Jocasta", "Kester",
            "Leonora");
    private static final int ROUNDS = 40;
    private static final int TRIES = 3;
    private static final List<String> SAID = List.of(
            "r%d %d and I counted twice",
            "round %d: got %d, is that right?",
            "%d is %d now, after I pulled back",
            "just finished rnd %d, %d stitches, the hook is 4 mm",
            "hello, see you at half past six, r%d was %d");

    private MessagesSpeed() {}

    public static void main(String[] arguments) throws Exception {
        compare("a chat", chat(LINES));
        compare("a list", list(LINES));
    }

    /** So many lines with a stamp and a name before each. */
    public static String chat(int lines) {
        return text("[03/02/2026, 19:12:05] %s: ", lines);
    }

    /** So many lines with a name before each. */
    public static String list(int lines) {
        return text("%s: ", lines);
    }

    private static String text(String head, int lines) {
        StringBuilder text = new StringBuilder();
        for (int line = 0; line < lines; line++) {
            text.append(head.formatted(STUDENTS.get(line % STUDENTS.size())))
                    .append(SAID.get(line % SAID.size()).formatted(1 + line % ROUNDS, 6 + line % 55))
                    .append('\n');
        }
        return text.toString();
    }

    /** A reader for the group and the pattern that the texts speak of. */
    public static MessagesReader reader() {
        return new MessagesReader(
                Expectations.of(PatternReader.readBare(Optional.of(Terms.US), GrowingPattern.of(ROUNDS))), STUDENTS);
    }

    private static void compare(String name, String text) throws Exception {
        MessagesReader reader = reader();
        double read = seconds(() -> reader.read(text));
        double other = seconds(() -> Parser.builder().build().parse(text));
        System.out.printf(
                "%s of %d lines: %.2f s, the other parser %.2f s (%.1f times as long)%n",
                name, LINES, read, other, read / other);
    }

    private static double seconds(Callable<?> work) throws Exception {
        double[] took = new double[TRIES];
        for (int run = 0; run < TRIES; run++) {
            long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.call();
            took[run] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began) / 1e9;
        }
        return Arrays.stream(took).min().orElseThrow();
    }
}
