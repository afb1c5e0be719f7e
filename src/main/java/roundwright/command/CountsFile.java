package roundwright.command;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.story.Check;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.wording.Wording;

/**
 * Students' counts as a table: a header {@code student,part,round,count}, perhaps with {@code note}, {@code pulled_back} and
 * {@code checks}, then a row a report in the order in which they came.
 *
 * <p>An empty count is no report. A row that is {@code pulled_back} says that its round is the last one left, with its count
 * where it has one; a row on the same round after it is that round worked once more. A row that makes no sense is a problem
 * with its place, and the others are used.
 */
final class CountsFile {
    private static final Wording WORDS = Wording.of("command");
    private static final List<String> NEEDED = List.of("student", "part", "round", "count");
    private static final Set<String> NO = Set.of("", "no", "n", "false", "0", "-");
    /** So many times the pattern's largest count, and a count is a slip of the keys. */
    private static final int ABSURD = 10;

    private final String name;
    private final Pattern pattern;
    private final int most;
    private final List<Row> rows = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private final Map<String, StudentId> students = new LinkedHashMap<>();
    /** The report that holds for each student's round. */
    private final Map<List<Object>, Row> standing = new LinkedHashMap<>();

    /** A row that was used. */
    record Row(int line, String student, CountReport report) {}

    /** A row that cannot be used, and why. */
    private static final class BadRow extends Exception {
        private final int column;

        BadRow(int column, String message) {
            super(message);
            this.column = column;
        }
    }

    private CountsFile(String name, Pattern pattern) {
        this.name = name;
        this.pattern = pattern;
        this.most = pattern.parts().stream()
                .flatMap(part -> part.rounds().stream())
                .mapToInt(round -> round.count().orElse(0))
                .max()
                .orElse(0);
    }

    static CountsFile read(TextSource source, Pattern pattern) throws CommandException {
        CountsFile file = new CountsFile(source.name(), pattern);
        file.read(source.text());
        return file;
    }

    List<Row> rows() {
        return rows;
    }

    /** What is wrong with rows that were left out, each with its place. */
    List<String> problems() {
        return problems;
    }

    private void read(String text) throws CommandException {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        String header = plain.lines().findFirst().orElse("");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(header.contains(";") && !header.contains(",") ? ';' : header.contains("\t") ? '\t' : ',')
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreHeaderCase(true)
                .setTrim(true)
                .setAllowMissingColumnNames(true)
                .setIgnoreSurroundingSpaces(true)
                .setTrailingData(true)
                .setLenientEof(true)
                .get();
        try (CSVParser parser = format.parse(new StringReader(plain))) {
            requireColumns(parser);
            for (CSVRecord row : parser) {
                read(row, (int) parser.getCurrentLineNumber());
            }
        } catch (IOException | UncheckedIOException | IllegalArgumentException failure) {
            throw new CommandException.Input(WORDS.say("counts.no-table", name));
        }
    }

    private void requireColumns(CSVParser parser) throws CommandException {
        List<String> missing = NEEDED.stream()
                .filter(column -> !parser.getHeaderMap().containsKey(column))
                .toList();
        if (!missing.isEmpty()) {
            throw new CommandException.Input(WORDS.say("counts.columns-missing", name, Wording.list(missing)));
        }
    }

    private void read(CSVRecord row, int line) {
        try {
            if (row.stream().anyMatch(value -> !value.isBlank())) {
                report(row, line);
            }
        } catch (BadRow bad) {
            problems.add(WORDS.say("counts.problem", name, line, bad.column, bad.getMessage()));
        }
    }

    private static String value(CSVRecord row, String column) {
        return row.isMapped(column) && row.isSet(column) ? row.get(column) : "";
    }

    private static int column(CSVRecord row, String column) {
        return row.getParser().getHeaderMap().get(column) + 1;
    }

    private void report(CSVRecord row, int line) throws BadRow {
        String student = value(row, "student");
        if (student.isEmpty()) {
            throw new BadRow(column(row, "student"), WORDS.say("counts.no-student"));
        }
        Part part = part(row);
        int round = round(row, part);
        OptionalInt count = count(row, part, round);
        boolean pulledBack = !NO.contains(value(row, "pulled_back").toLowerCase(Locale.ROOT));
        if (count.isPresent() || pulledBack) {
            add(row, line, student, part.name(), round, count, pulledBack);
        }
    }

    private Part part(CSVRecord row) throws BadRow {
        String wanted = value(row, "part");
        Optional<Part> found = pattern.parts().stream()
                .filter(part -> part.name().equalsIgnoreCase(wanted)
                        || wanted.isEmpty() && pattern.parts().size() == 1)
                .findFirst();
        List<String> names = pattern.parts().stream().map(Part::name).toList();
        return found.orElseThrow(
                () -> new BadRow(column(row, "part"), WORDS.say("counts.no-such-part", wanted, Wording.list(names))));
    }

    private static int round(CSVRecord row, Part part) throws BadRow {
        int number = number(row, "round");
        if (part.round(number).isEmpty()) {
            List<Round> rounds = part.rounds();
            throw new BadRow(
                    column(row, "round"),
                    rounds.isEmpty()
                            ? WORDS.say("counts.part-without-rounds", part.name())
                            : WORDS.say(
                                    "counts.no-such-round",
                                    part.name(),
                                    number,
                                    rounds.get(0).number(),
                                    rounds.get(rounds.size() - 1).number()));
        }
        return number;
    }

    private static int number(CSVRecord row, String column) throws BadRow {
        String text = value(row, column);
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            throw new BadRow(column(row, column), WORDS.say("counts.not-a-number", column, text));
        }
    }

    private OptionalInt count(CSVRecord row, Part part, int round) throws BadRow {
        if (value(row, "count").isEmpty()) {
            return OptionalInt.empty();
        }
        int count = number(row, "count");
        if (count < 0) {
            throw new BadRow(column(row, "count"), WORDS.say("counts.negative", count));
        }
        if (count > ABSURD * Math.max(most, ABSURD)) {
            int written =
                    part.round(round).flatMap(found -> boxed(found.count())).orElse(most);
            throw new BadRow(column(row, "count"), WORDS.say("counts.absurd", count, written));
        }
        return OptionalInt.of(count);
    }

    private static Optional<Integer> boxed(OptionalInt number) {
        return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }

    private void add(
            CSVRecord row, int line, String student, String part, int round, OptionalInt count, boolean pulledBack)
            throws BadRow {
        List<Object> place = List.of(student, part, round);
        Optional<Row> before = Optional.ofNullable(standing.get(place));
        boolean again = before.isPresent() && before.get().report().kind() == CountReport.Kind.PULLED_BACK;
        if (before.isPresent() && !pulledBack && !again) {
            throw new BadRow(
                    column(row, "round"),
                    WORDS.say("counts.twice", student, part, round, before.get().line()));
        }
        if (again) {
            pullBack(line, student, part, round - 1, OptionalInt.empty(), Map.of());
        }
        Map<String, String> checks = checks(row, line);
        if (pulledBack) {
            pullBack(line, student, part, round, count, checks);
        } else {
            file(line, student, report(student, part, round, CountReport.Kind.COUNTED, count, checks));
        }
    }

    private void pullBack(
            int line, String student, String part, int round, OptionalInt count, Map<String, String> checks) {
        standing.keySet()
                .removeIf(place ->
                        place.get(0).equals(student) && place.get(1).equals(part) && (Integer) place.get(2) > round);
        file(line, student, report(student, part, round, CountReport.Kind.PULLED_BACK, count, checks));
    }

    private void file(int line, String student, CountReport report) {
        Row row = new Row(line, student, report);
        rows.add(row);
        if (report.count().isPresent()) {
            standing.put(List.of(student, report.part(), report.round()), row);
        }
    }

    private CountReport report(
            String student,
            String part,
            int round,
            CountReport.Kind kind,
            OptionalInt count,
            Map<String, String> checks) {
        StudentId id = students.computeIfAbsent(student, name -> new StudentId(students.size() + 1L));
        return new CountReport(rows.size() + 1L, id, part, round, kind, count, Instant.EPOCH, "").checked(checks);
    }

    /** Answers such as {@code look-for-a-gap=yes;recount=same}; one that is no answer is a problem, the row is used. */
    private Map<String, String> checks(CSVRecord row, int line) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String said : value(row, "checks").split("[;|]")) {
            String[] pair = said.trim().split("\\s*=\\s*", 2);
            boolean known = pair.length == 2
                    && Check.of(pair[0])
                            .filter(check -> check.answers().contains(pair[1]))
                            .isPresent();
            if (known) {
                answers.put(pair[0], pair[1]);
            } else if (!said.isBlank()) {
                problems.add(WORDS.say(
                        "counts.problem",
                        name,
                        line,
                        column(row, "checks"),
                        WORDS.say("counts.no-check", said.trim())));
            }
        }
        return answers;
    }
}
