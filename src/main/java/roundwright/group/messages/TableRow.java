package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.messages.Column.Kind;
import roundwright.group.messages.PastedTable.Cell;
import roundwright.notation.Span;

/** One line of a pasted table below its heads. */
record TableRow(String text, List<Span> cells, List<Column> columns, Known known) {
    private static final Pattern ROUNDS =
            Pattern.compile("(?i)(?:round|rnds?|rd|rows?|r)?\\.?\\s*(\\d{1,3})(?:\\s*(?:-|–|to)\\s*(\\d{1,3}))?[.)]?");
    private static final Pattern COUNT =
            Pattern.compile("\\s*(\\d{1,4})(?!\\d|[.,:]\\d)\\s*(?:(?:sts?|stitches|sc|dc)\\b)?\\D{0,60}");

    List<Cell> counts() {
        Optional<Matcher> rounds = written(Kind.ROUND).map(ROUNDS::matcher).filter(Matcher::matches);
        int from = rounds.map(matcher -> Integer.parseInt(matcher.group(1))).orElse(0);
        int to = rounds.map(matcher -> matcher.group(2)).map(Integer::parseInt).orElse(from);
        List<Cell> counts = new ArrayList<>();
        for (int index = 0; index < Math.min(cells.size(), columns.size()); index++) {
            Column column = columns.get(index);
            Matcher count = COUNT.matcher(cells.get(index).of(text));
            boolean ofRow = from > 0 && (column.kind() == Kind.COUNT || column.kind() == Kind.OF_STUDENT);
            if (ofRow && count.matches()) {
                counts.add(cell(column, from, Math.max(from, to), count, index));
            } else if (column.kind() == Kind.OF_ROUND && count.matches()) {
                counts.add(cell(column, column.round(), column.round(), count, index));
            }
        }
        return counts;
    }

    private Cell cell(Column column, int from, int to, Matcher count, int index) {
        Optional<List<String>> students =
                column.kind() == Kind.OF_STUDENT ? Optional.of(List.of(column.student())) : students();
        Optional<String> part = written(Kind.PART).flatMap(known.parts()::named);
        return new Cell(students, part, from, to, Integer.parseInt(count.group(1)), cells.get(index));
    }

    /** Whose row it is: named in its column, or in the first cell of a row whose other cells are of a round each. */
    private Optional<List<String>> students() {
        boolean rounds = columns.stream().anyMatch(column -> column.kind() == Kind.OF_ROUND);
        Optional<String> name = written(Kind.NAME)
                .or(() -> rounds ? Optional.of(cells.get(0).of(text).strip()) : Optional.empty());
        return name.map(written -> known.names().knowsNobody()
                ? List.of(written)
                : known.names().find(written).map(List::of).orElse(List.of()));
    }

    private Optional<String> written(Kind kind) {
        for (int index = 0; index < Math.min(cells.size(), columns.size()); index++) {
            if (columns.get(index).kind() == kind) {
                return Optional.of(cells.get(index).of(text).strip()).filter(written -> !written.isEmpty());
            }
        }
        return Optional.empty();
    }
}
