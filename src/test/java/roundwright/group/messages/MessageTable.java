package roundwright.group.messages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.Expectations;
import roundwright.group.TrialCourse;

/** Invented messages with what they say, found out by hand: a text, then {@code =>} and its reports. */
record MessageTable(String name, Expectations expectations, List<String> students, List<Sample> samples) {
    private static final Expectations BALL = Expectations.of(
            TrialCourse.of(TrialCourse.part("Ball", 6, 12, 18, 24, 30, 36, 42, 42, 42, 36, 36, 30, 30, 24, 18, 12, 6))
                    .pattern());

    private static final Expectations HARE = Expectations.of(TrialCourse.of(
                    TrialCourse.part("Body", 7, 14, 21, 28, 35, 35, 35, 35, 28, 28, 21, 21, 14, 14, 7),
                    TrialCourse.part("Head", 6, 12, 18, 24, 24, 24, 24, 18, 12, 6),
                    TrialCourse.part("Left ear", 5, 8, 12, 12, 12, 12, 10, 8),
                    TrialCourse.part("Right ear", 5, 8, 12, 12, 12, 12, 10, 8))
            .pattern());

    /** A text and its reports, each as {@code student|part|round=count}, with {@code !} after pulling back. */
    record Sample(String text, Set<String> reports) {}

    static MessageTable ball() {
        return new MessageTable("ball", BALL, List.of(), samples("ball"));
    }

    static MessageTable kitchen() {
        return new MessageTable("kitchen", BALL, List.of(), samples("kitchen"));
    }

    static MessageTable train() {
        return new MessageTable("train", BALL, List.of(), samples("train"));
    }

    static MessageTable hare() {
        return new MessageTable("hare", HARE, List.of(), samples("hare"));
    }

    static MessageTable tower() {
        int[] tower = new int[40];
        for (int round = 1; round <= 40; round++) {
            tower[round - 1] = round < 8 ? 6 * round : round < 21 ? 42 : round < 36 ? 36 : 30;
        }
        Expectations expectations = Expectations.of(
                TrialCourse.of(TrialCourse.part("Tower", tower), TrialCourse.part("Lantern", 6, 12, 18, 18, 12, 6))
                        .pattern());
        return new MessageTable("tower", expectations, List.of(), samples("tower"));
    }

    static MessageTable evening() {
        return new MessageTable("evening", HARE, List.of(), samples("evening"));
    }

    static MessageTable village() {
        return new MessageTable("village", BALL, group().students(), samples("village"));
    }

    static MessageTable group() {
        List<String> students = List.of(
                "Odalys Brandt",
                "Bram",
                "Tuuli",
                "Perpetua Quill",
                "Ngozi",
                "Cosmo",
                "Ishbel",
                "Wendeline",
                "Marek",
                "Inés",
                "Zoë",
                "Søren");
        return new MessageTable("group", BALL, students, samples("group"));
    }

    private static List<Sample> samples(String name) {
        List<Sample> samples = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (String line : text(name).lines().toList()) {
            if (line.startsWith("=>")) {
                samples.add(new Sample(
                        text.toString().stripTrailing(),
                        reports(line.substring(2).strip())));
                text.setLength(0);
            } else if (!line.startsWith("# ") || !text.isEmpty()) {
                text.append(line).append('\n');
            }
        }
        return samples;
    }

    private static String text(String name) {
        try (InputStream stream = MessageTable.class.getResourceAsStream("/roundwright/messages/" + name + ".txt")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static final Pattern REPORT = Pattern.compile(
            "(?:(?<who>[^\\[\\d]*?)\\s*)?(?:\\[(?<part>[^]]*)]\\s*)?(?<from>\\d+)(?:-(?<to>\\d+))?=(?<count>\\d+)(?<back>!?)");

    private static Set<String> reports(String written) {
        Set<String> reports = new TreeSet<>();
        if (!written.equals("-")) {
            Arrays.stream(written.split(";")).forEach(report -> add(reports, report.strip()));
        }
        return reports;
    }

    private static void add(Set<String> reports, String written) {
        Matcher report = REPORT.matcher(written);
        if (!report.matches()) {
            throw new IllegalArgumentException("not a report: " + written);
        }
        int from = Integer.parseInt(report.group("from"));
        int to = report.group("to") == null ? from : Integer.parseInt(report.group("to"));
        String part = report.group("part") == null ? "" : report.group("part");
        for (int round = from; round <= to; round++) {
            reports.add(key(
                    report.group("who"),
                    part,
                    round,
                    Integer.parseInt(report.group("count")),
                    !report.group("back").isEmpty()));
        }
    }

    static String key(String who, String part, int round, int count, boolean back) {
        return who + "|" + part + "|" + round + "=" + count + (back ? "!" : "");
    }

    /** What the reader finds and is sure of. */
    Set<String> read(String text) {
        Set<String> found = new TreeSet<>();
        for (Finding finding : new MessagesReader(expectations, students).read(text)) {
            if (finding instanceof Reading reading && !reading.doubtful()) {
                reading.rounds()
                        .forEach(round -> found.add(key(
                                reading.student().orElse(""),
                                reading.part().orElse(""),
                                round,
                                reading.count(),
                                reading.pulledBack())));
            }
        }
        return found;
    }
}
