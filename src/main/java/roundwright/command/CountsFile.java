package roundwright.command;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.StudentId;
import roundwright.group.counts.CellTrouble;
import roundwright.group.counts.Column;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.CountRow;
import roundwright.group.counts.CountsHistory;
import roundwright.group.counts.CountsReader;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Roll;
import roundwright.group.counts.Table;
import roundwright.group.counts.TableFile;
import roundwright.mistakes.story.Check;
import roundwright.pattern.Pattern;
import roundwright.wording.Wording;

/**
 * Students' counts as a table: a header {@code student,part,round,count}, perhaps with {@code note}, {@code pulled_back} and
 * {@code checks}, then a row a report in the order in which they came. Every name is a student, as it is written.
 *
 * <p>An empty count is no report. A row that is {@code pulled_back} says that its round is the last one left, with its count
 * where it has one; a row on the same round after it is that round worked once more. A row that makes no sense is a problem
 * with its place, and the others are used.
 *
 * @param problems what is wrong with rows and cells, each with its place
 */
record CountsFile(List<Row> rows, List<String> problems) {
    private static final Wording WORDS = Wording.of("command");

    /** A row that was used. */
    record Row(int line, String student, CountReport report) {}

    static CountsFile read(String name, Terminal terminal, Pattern pattern) throws CommandException {
        String shown = TextSource.shown(name);
        Table table = table(shown, TextSource.bytes(name, terminal));
        Roll roll = Roll.ofAnybody(Expectations.of(pattern)).withChecks(Check.allAnswers());
        ColumnMatch match = ColumnMatch.guess(table, roll).without(Column.Kind.DATE);
        if (!match.usable()) {
            List<String> missing = match.missing().stream()
                    .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                    .toList();
            throw new CommandException.Input(WORDS.say("counts.columns-missing", shown, Wording.list(missing)));
        }
        CountsReader.Result result = CountsReader.read(table, match, roll);
        CountsHistory history = CountsHistory.of(result.rows());
        return new CountsFile(reports(history.rows()), problems(shown, result, history));
    }

    private static Table table(String name, byte[] bytes) throws CommandException {
        try {
            return TableFile.read(bytes).stream()
                    .filter(table -> !table.rows().isEmpty())
                    .findFirst()
                    .orElseThrow(() -> new NotATable(WORDS.say("counts.empty")));
        } catch (NotATable not) {
            throw new CommandException.Input(WORDS.say("counts.no-table", name, not.getMessage()));
        }
    }

    private static List<String> problems(String name, CountsReader.Result result, CountsHistory history) {
        return Stream.concat(result.troubles().stream(), history.troubles().stream())
                .sorted(Comparator.comparingInt(CellTrouble::line))
                .map(trouble -> WORDS.say("counts.problem", name, trouble.line(), trouble.column(), trouble.message()))
                .toList();
    }

    private static List<Row> reports(List<CountRow> rows) {
        Map<String, StudentId> students = new LinkedHashMap<>();
        rows.forEach(row -> students.computeIfAbsent(row.student(), name -> new StudentId(students.size() + 1L)));
        return IntStream.range(0, rows.size())
                .mapToObj(index ->
                        row(index, rows.get(index), students.get(rows.get(index).student())))
                .toList();
    }

    private static Row row(int index, CountRow row, StudentId student) {
        CountReport report = new CountReport(
                index + 1L,
                student,
                row.place().part(),
                row.place().round(),
                row.kind(),
                row.count(),
                row.said().map(said -> said.toInstant(ZoneOffset.UTC)).orElse(Instant.EPOCH),
                row.note(),
                row.checks(),
                Optional.empty());
        return new Row(row.line(), row.student(), report);
    }
}
