package roundwright.group.counts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import roundwright.group.counts.Column.Kind;

/**
 * What each column of a table is: guessed from headings and, where there are none, from what the cells hold; a person can put any
 * of it right.
 *
 * @param headingRows how many rows stand above the counts: titles and headings; 0 where the counts begin at once
 */
public record ColumnMatch(int headingRows, List<Column> columns) {
    /** So many rows may stand above the headings. */
    private static final int TITLES = 10;

    private static final int LOOKED_AT = 50;

    public ColumnMatch {
        columns = List.copyOf(columns);
    }

    /** The likeliest meaning of a table for a group and a pattern; where there is none, one that is not {@link #usable}. */
    public static ColumnMatch guess(Table table, Roll roll) {
        List<Table.Row> rows = table.rows();
        for (int row = 0; row < Math.min(TITLES, rows.size()); row++) {
            boolean counts = roll.listed(rows.get(row).cell(0)).isPresent();
            ColumnMatch match = byHeading(table, row, roll);
            if (!counts && match.usable()) {
                return match;
            }
        }
        ColumnMatch byContent = byContent(table, roll);
        return byContent.usable() || rows.isEmpty() ? byContent : byHeading(table, 0, roll);
    }

    private static ColumnMatch byHeading(Table table, int row, Roll roll) {
        List<Column> named = new ArrayList<>();
        Optional<String> partAbove = Optional.empty();
        for (int column = 0; column < table.columns(); column++) {
            partAbove = above(table, row, column, roll).or(keep(partAbove));
            named.add(inPart(fromHeading(table.rows().get(row).cell(column), column, roll), partAbove));
        }
        return new ColumnMatch(row + 1, once(named)).withoutDoubts(table);
    }

    private static java.util.function.Supplier<Optional<String>> keep(Optional<String> part) {
        return () -> part;
    }

    /** A part that is named once above the first of its rounds. */
    private static Optional<String> above(Table table, int row, int column, Roll roll) {
        return row == 0 ? Optional.empty() : roll.part(table.rows().get(row - 1).cell(column));
    }

    private static Column inPart(Column column, Optional<String> part) {
        boolean open = column.is(Kind.COUNTS_OF_ROUND) && column.part().isEmpty();
        return open ? Column.ofRound(part, column.round()) : column;
    }

    private static Column fromHeading(String written, int column, Roll roll) {
        String heading = Harmless.undone(written);
        Optional<String> student = column == 0 ? Optional.empty() : roll.listed(heading);
        return Headings.kind(heading)
                .map(Column::of)
                .or(() -> student.map(Column::ofStudent))
                .or(() -> RoundLabel.read(heading, roll)
                        .filter(label -> label.from() == label.to())
                        .map(label -> Column.ofRound(label.part(), label.from())))
                .orElse(Column.PASSED_OVER);
    }

    /** The first of two columns with the same heading counts. */
    private static List<Column> once(List<Column> columns) {
        Set<Column> seen = new HashSet<>();
        return columns.stream()
                .map(column -> column.is(Kind.PASSED_OVER) || seen.add(column) ? column : Column.PASSED_OVER)
                .toList();
    }

    /** Where rounds or students have a column each, the first column without a meaning that fits says the other. */
    private ColumnMatch withoutDoubts(Table table) {
        if (!has(Kind.STUDENT) && has(Kind.COUNTS_OF_ROUND)) {
            return open(table, cell -> cell.codePoints().anyMatch(Character::isLetter), Kind.STUDENT);
        }
        boolean students = !has(Kind.ROUND) && has(Kind.COUNTS_OF_STUDENT);
        return students ? open(table, cell -> cell.matches(".*\\d.*"), Kind.ROUND) : this;
    }

    private ColumnMatch open(Table table, Predicate<String> fits, Kind kind) {
        for (int column = 0; column < columns.size(); column++) {
            if (columns.get(column).is(Kind.PASSED_OVER) && mostly(cells(table, headingRows, column), fits)) {
                return with(column, Column.of(kind));
            }
        }
        return this;
    }

    /** Without headings: names in one column, then the round, then the count. */
    private static ColumnMatch byContent(Table table, Roll roll) {
        List<Column> columns = new ArrayList<>();
        for (int column = 0; column < table.columns(); column++) {
            columns.add(Column.of(fromCells(table, column, columns, roll)));
        }
        return new ColumnMatch(0, columns);
    }

    private static Kind fromCells(Table table, int column, List<Column> before, Roll roll) {
        List<String> cells = cells(table, 0, column);
        if (mostly(cells, cell -> roll.listed(cell).isPresent())) {
            return free(Kind.STUDENT, before);
        }
        if (mostly(cells, cell -> roll.part(cell).isPresent())) {
            return free(Kind.PART, before);
        }
        if (mostly(cells, cell -> DayCell.read(cell, false).isPresent())) {
            return free(Kind.DATE, before);
        }
        if (mostly(cells, cell -> RoundLabel.read(cell, roll).isPresent())) {
            return before.stream().anyMatch(other -> other.is(Kind.ROUND)) ? free(Kind.COUNT, before) : Kind.ROUND;
        }
        return Kind.PASSED_OVER;
    }

    private static List<String> cells(Table table, int from, int column) {
        return table.rows().stream()
                .skip(from)
                .limit(LOOKED_AT)
                .map(row -> row.cell(column))
                .filter(cell -> !cell.isEmpty())
                .toList();
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

    /** What is needed and no column is: somebody's counts, of some round. Empty where counts can be read. */
    public List<Kind> missing() {
        if (has(Kind.COUNTS_OF_ROUND)) {
            return lacking(Kind.STUDENT);
        }
        return has(Kind.COUNTS_OF_STUDENT) ? lacking(Kind.ROUND) : lacking(Kind.STUDENT, Kind.ROUND, Kind.COUNT);
    }

    private List<Kind> lacking(Kind... needed) {
        return java.util.Arrays.stream(needed).filter(kind -> !has(kind)).toList();
    }

    /** Whether counts can be read this way. */
    public boolean usable() {
        return missing().isEmpty();
    }

    /** The same with another meaning for one column; a meaning that only one column can have is taken from the one that had it. */
    public ColumnMatch with(int column, Column meaning) {
        List<Column> changed = new ArrayList<>(columns);
        boolean passedOver = meaning.is(Kind.PASSED_OVER);
        changed.replaceAll(other -> !passedOver && other.equals(meaning) ? Column.PASSED_OVER : other);
        changed.set(column, meaning);
        return new ColumnMatch(headingRows, changed);
    }

    /** The same with columns of a kind left alone. */
    public ColumnMatch without(Kind kind) {
        return new ColumnMatch(
                headingRows,
                columns.stream()
                        .map(column -> column.is(kind) ? Column.PASSED_OVER : column)
                        .toList());
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
