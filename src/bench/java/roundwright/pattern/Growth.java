package roundwright.pattern;

import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * How reading grows with its text: the input is doubled four times, and each time is held against the one before. An exponent
 * of 1 is in proportion, 2 quadratic. {@code java -cp target/roundwright.jar roundwright.pattern.Growth}.
 */
public final class Growth {
    private static final int DOUBLINGS = 4;
    private static final int FIRST = 500;
    private static final int TRIES = 15;

    private Growth() {}

    public static void main(String[] arguments) {
        grow("rounds read", GrowingPattern::of);
        grow("rounds read, one without a count", rounds -> GrowingPattern.of(rounds).replace(" (6)\n", "\n"));
        grow("steps of one line", steps -> "Rnd 1: " + "sc, inc, ".repeat(steps / 5) + "sc");
    }

    private static void grow(String name, IntFunction<String> input) {
        fastest(input.apply(FIRST << DOUBLINGS));
        double before = 0;
        for (int doubled = 0; doubled <= DOUBLINGS; doubled++) {
            String text = input.apply(FIRST << doubled);
            double took = fastest(text);
            String exponent = before > 0 ? String.format("%.2f", Math.log(took / before) / Math.log(2)) : "";
            System.out.printf("%-34s %8d characters %9.2f ms  %s%n", name, text.length(), took, exponent);
            before = took;
        }
    }

    private static double fastest(String text) {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < TRIES; i++) {
            long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            PatternReader.readBare(Optional.empty(), text).parts().forEach(part -> part.lines().forEach(Line::words));
            best = Math.min(best, (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin) / 1e6);
        }
        return best;
    }
}
