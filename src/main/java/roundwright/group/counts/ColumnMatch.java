package roundwright.group.counts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.counts.Column.Kind;
import roundwright.group.messages.Folding;

/**
 * What each column of a table is: guessed from headings and, where there are none, from what the cells hold; a person can put any
 * of it right.
 *
 * @param headings whether the first row is headings
 */
public record ColumnMatch(boolean headings, List<Column> columns) {
    private static final Map<String, Kind> WORDS = Map.ofEntries(
            Map.entry("student", Kind.STUDENT),
            Map.entry("students", Kind.STUDENT),
            Map.entry("name", Kind.STUDENT),
            Map.entry("who", Kind.STUDENT),
            Map.entry("pupil", Kind.STUDENT),
            Map.entry("person", Kind.STUDENT),
            Map.entry("part", Kind.PART),
            Map.entry("piece", Kind.PART),
            Map.entry("section", Kind.PART),
            Map.entry("round", Kind.ROUND),
            Map.entry("rnd", Kind.ROUND),
            Map.entry("rd", Kind.ROUND),
            Map.entry("row", Kind.ROUND),
            Map.entry("r", Kind.ROUND),
            Map.entry("count", Kind.COUNT),
            Map.entry("counts", Kind.COUNT),
            Map.entry("stitches", Kind.COUNT),
            Map.entry("sts", Kind.COUNT),
            Map.entry("reported", Kind.COUNT),
            Map.entry("date", Kind.DATE),
            Map.entry("when", Kind.DATE),
            Map.entry("day", Kind.DATE),
            Map.entry("note", Kind.NOTE),
            Map.entry("notes", Kind.NOTE),
            Map.entry("remark", Kind.NOTE),
            Map.entry("comment", Kind.NOTE),
            Map.entry("comments", Kind.NOTE),
            Map.entry("pulled back", Kind.PULLED_BACK),
            Map.entry("pulled_back", Kind.PULLED_BACK));

    private static final Pattern ROUND_HEADING =
            Pattern.compile("(?<part>.*?)\\s*(?:r|rd|rnd|round|row)?[ .#]*(?<round>\\d{1,3})");

    public ColumnMatch {
        columns = List.copyOf(columns);
    }

    /** The likeliest meaning of a table for a group and a pattern. */
    public static ColumnMatch guess(Table table, Roll roll) {
        if (table.rows().isEmpty()) {
            return new ColumnMatch(false, List.of());
        }
        List<Column> named = new ArrayList<>();
        for (int column = 0; column < table.columns(); column++) {
            named.add(fromHeading(table.rows().get(0).cell(column), column, roll));
        }
        ColumnMatch byHeading = new ColumnMatch(true, once(named));
        boolean headings = roll.student(table.rows().get(0).cell(0)).isEmpty();
        return headings && byHeading.usable() ? byHeading.withoutDoubts() : byContent(table, roll);
    }

    private static Column fromHeading(String heading, int column, Roll roll) {
        String folded =
                Folding.fold(heading).replaceAll("[^\\p{L}\\p{N}_ ]", " ").strip();
        Kind word = WORDS.get(folded);
        if (word != null) {
            return Column.of(word);
        }
        Optional<String> student = column == 0 ? Optional.empty() : roll.student(heading);
        return student.map(Column::ofStudent).or(() -> ofRound(folded, roll)).orElse(Column.of(Kind.PASSED_OVER));
    }

    private static Optional<Column> ofRound(String folded, Roll roll) {
        Matcher round = ROUND_HEADING.matcher(folded);
        if (!round.matches()) {
            return Optional.empty();
        }
        String before = round.group("part").strip();
        Optional<String> part = before.isEmpty() ? Optional.empty() : roll.part(before);
        boolean understood = before.isEmpty() || part.isPresent();
        return understood
                ? Optional.of(Column.ofRound(part, Integer.parseInt(round.group("round"))))
                : Optional.empty();
    }

    /** The first of two columns with the same heading counts. */
    private static List<Column> once(List<Column> columns) {
        Set<Column> seen = new HashSet<>();
        return columns.stream()
                .map(column -> column.is(Kind.PASSED_OVER) || seen.add(column) ? column : Column.of(Kind.PASSED_OVER))
                .toList();
    }

    /** Where rounds or students have a column each, the first column without a meaning says the other. */
    private ColumnMatch withoutDoubts() {
        if (!has(Kind.STUDENT) && has(Kind.COUNTS_OF_ROUND)) {
            return with(0, Column.of(Kind.STUDENT));
        }
        return !has(Kind.ROUND) && has(Kind.COUNTS_OF_STUDENT) ? with(0, Column.of(Kind.ROUND)) : this;
    }

    /** Without headings: names in one column, then the round, then the count. */
    private static ColumnMatch byContent(Table table, Roll roll) {
        List<Column> columns = new ArrayList<>();
        for (int column = 0; column < table.columns(); column++) {
            columns.add(Column.of(fromCells(table, column, columns, roll)));
        }
        return new ColumnMatch(false, columns);
    }

    private static Kind fromCells(Table table, int column, List<Column> before, Roll roll) {
        List<String> cells = table.rows().stream()
                .limit(50)
                .map(row -> row.cell(column))
                .filter(cell -> !cell.isEmpty())
                .toList();
        if (mostly(cells, cell -> roll.student(cell).isPresent())) {
            return free(Kind.STUDENT, before);
        }
        if (mostly(cells, cell -> roll.part(cell).isPresent())) {
            return free(Kind.PART, before);
        }
        if (mostly(cells, cell -> cell.matches("(?i)(r|rnd|round|row)?[ .]*\\d{1,4}"))) {
            return before.stream().anyMatch(other -> other.is(Kind.ROUND)) ? free(Kind.COUNT, before) : Kind.ROUND;
        }
        return Kind.PASSED_OVER;
    }

    private static Kind free(Kind kind, List<Column> before) {
        return before.stream().anyMatch(other -> other.is(kind)) ? Kind.PASSED_OVER : kind;
    }

    private static boolean mostly(List<String> cells, Predicate<String> test) {
        return !cells.isEmpty() && cells.stream().filter(test).count() * 2 > cells.size();
    }

    private boolean has(Kind kind) {
        return columns.stream().anyMatch(column -> column.is(kind));
    }

    /** Whether counts can be read this way: somebody's, of some round. */
    public boolean usable() {
        boolean rows = has(Kind.STUDENT) && has(Kind.ROUND) && has(Kind.COUNT);
        return rows || has(Kind.COUNTS_OF_ROUND) || has(Kind.COUNTS_OF_STUDENT);
    }

    /** The same with another meaning for one column. */
    public ColumnMatch with(int column, Column meaning) {
        List<Column> changed = new ArrayList<>(columns);
        changed.set(column, meaning);
        return new ColumnMatch(headings, changed);
    }

    Optional<Integer> column(Kind kind) {
        for (int index = 0; index < columns.size(); index++) {
            if (columns.get(index).is(kind)) {
                return Optional.of(index);
            }
        }
        return Optional.empty();
    }
}
