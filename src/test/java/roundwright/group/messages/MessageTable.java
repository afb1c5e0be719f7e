package roundwright.group.messages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.group.TrialCourse;

/**
 * Invented messages with what they say, found out by hand: a text, then {@code =>} and its reports, parted by semicolons. {@code ~6=35}
 * is a report that is to be shown for a decision, {@code ?6} something said of round 6 that gives no count, {@code ?} of no round.
 * A line {@code ## Name} begins the texts of another writer.
 */
record MessageTable(String name, Expectations expectations, List<String> students, List<Sample> samples) {
    private static final Expectations BALL = Expectations.of(
            TrialCourse.of(TrialCourse.part("Ball", 6, 12, 18, 24, 30, 36, 42, 42, 42, 36, 36, 30, 30, 24, 18, 12, 6))
                    .pattern());

    private static final Expectations JUG = Expectations.of(TrialCourse.of(TrialCourse.part(
                    "Jug", 8, 16, 24, 32, 40, 48, 48, 48, 48, 48, 48, 40, 40, 32, 32, 24, 24, 24, 28, 32))
            .pattern());

    private static final Expectations HARE = Expectations.of(TrialCourse.of(
                    TrialCourse.part("Body", 7, 14, 21, 28, 35, 35, 35, 35, 28, 28, 21, 21, 14, 14, 7),
                    TrialCourse.part("Head", 6, 12, 18, 24, 24, 24, 24, 18, 12, 6),
                    TrialCourse.part("Left ear", 5, 8, 12, 12, 12, 12, 10, 8),
                    TrialCourse.part("Right ear", 5, 8, 12, 12, 12, 12, 10, 8))
            .pattern());

    private static final List<String> CLUB =
            List.of("Anneliese", "Kofi Mensa", "Beatrix", "Dov", "Shira", "Old Tom", "Nico", "Marguerite");

    /**
     * A text and its reports, each as {@code student|part|round=count}, with {@code !} after pulling back.
     *
     * @param open reports that are to be shown for a decision
     * @param flags rounds of which something is said that gives no count; 0 where it names no round
     */
    record Sample(String text, Set<String> reports, Set<String> open, Set<Integer> flags) {}

    static MessageTable ball() {
        return new MessageTable("ball", BALL, List.of(), samples(BALL, "ball"));
    }

    static MessageTable kitchen() {
        return new MessageTable("kitchen", BALL, List.of(), samples(BALL, "kitchen"));
    }

    static MessageTable train() {
        return new MessageTable("train", BALL, List.of(), samples(BALL, "train"));
    }

    static MessageTable hare() {
        return new MessageTable("hare", HARE, List.of(), samples(HARE, "hare"));
    }

    static MessageTable tower() {
        return new MessageTable("tower", lighthouse(), List.of(), samples(lighthouse(), "tower"));
    }

    private static Expectations lighthouse() {
        int[] tower = new int[40];
        for (int round = 1; round <= 40; round++) {
            tower[round - 1] = round < 8 ? 6 * round : round < 21 ? 42 : round < 36 ? 36 : 30;
        }
        return Expectations.of(
                TrialCourse.of(TrialCourse.part("Tower", tower), TrialCourse.part("Lantern", 6, 12, 18, 18, 12, 6))
                        .pattern());
    }

    /** Messages of a hundred other writers, each set written before the reader had been tried on it. */
    static List<MessageTable> others() {
        return List.of(
                other("lane", BALL, List.of()),
                other("jug", JUG, List.of()),
                other("parts", HARE, List.of()),
                other("wall", lighthouse(), List.of()),
                other("chats", BALL, CLUB),
                other("strangers", BALL, List.of()),
                other("third", BALL, List.of()),
                other("thirdchats", BALL, CLUB),
                other("fourth", BALL, List.of()),
                other("fourthchats", BALL, CLUB),
                other("fifth", HARE, List.of()),
                other("fifthball", BALL, List.of()),
                other("sixth", BALL, List.of()),
                other("sixthchats", BALL, CLUB),
                other("seventh", BALL, List.of()));
    }

    private static MessageTable other(String name, Expectations expectations, List<String> students) {
        return new MessageTable(name, expectations, students, samples(expectations, "fresh/" + name));
    }

    static MessageTable evening() {
        return new MessageTable("evening", HARE, List.of(), samples(HARE, "evening"));
    }

    static MessageTable village() {
        return new MessageTable("village", BALL, group().students(), samples(BALL, "village"));
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
        return new MessageTable("group", BALL, students, samples(BALL, "group"));
    }

    private static List<Sample> samples(Expectations expectations, String name) {
        return samplesIn(expectations, text(name));
    }

    private static List<Sample> samplesIn(Expectations expectations, String table) {
        List<Sample> samples = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (String line : table.lines().toList()) {
            if (line.startsWith("=>")) {
                samples.add(sample(
                        expectations,
                        text.toString().stripTrailing(),
                        line.substring(2).strip()));
                text.setLength(0);
            } else if (!line.matches("##? .*") || !text.isEmpty()) {
                text.append(line).append('\n');
            }
        }
        return samples;
    }

    private static Sample sample(Expectations expectations, String text, String written) {
        Set<String> reports = new TreeSet<>();
        Set<String> open = new TreeSet<>();
        Set<Integer> flags = new TreeSet<>();
        for (String each : written.equals("-") ? new String[0] : written.split(";")) {
            String report = each.strip();
            if (report.startsWith("?")) {
                flags.add(report.length() == 1 ? 0 : Integer.parseInt(report.substring(1)));
            } else {
                add(expectations, report.startsWith("~") ? open : reports, report.replaceFirst("^~", ""));
            }
        }
        return new Sample(text, reports, open, flags);
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

    private static void add(Expectations expectations, Set<String> reports, String written) {
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
                    part.isEmpty() ? onlyPart(expectations, round) : part,
                    round,
                    Integer.parseInt(report.group("count")),
                    !report.group("back").isEmpty()));
        }
    }

    /** A round that one part alone has needs no part named. */
    private static String onlyPart(Expectations expectations, int round) {
        List<String> parts = expectations.places().stream()
                .filter(place -> place.round() == round)
                .map(RoundPlace::part)
                .distinct()
                .toList();
        return parts.size() == 1 ? parts.get(0) : "";
    }

    static String key(String who, String part, int round, int count, boolean back) {
        return who + "|" + part + "|" + round + "=" + count + (back ? "!" : "");
    }

    List<Finding> read(String text) {
        return new MessagesReader(expectations, students).read(text);
    }

    /** The reports of readings that are sure, or of those that are not. */
    static Set<String> reports(List<Finding> findings, boolean sure) {
        Set<String> found = new TreeSet<>();
        for (Finding finding : findings) {
            if (finding instanceof Reading reading && reading.doubtful() != sure) {
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
