package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/**
 * A table pasted as text: a line of heads and the lines below it, with the same sign between their cells. Either one column holds
 * rounds and others their counts, or one holds names and the others the counts of a round each.
 *
 * @param cells the counts in it
 */
record PastedTable(Span span, List<Cell> cells) {
    /**
     * A count in a table.
     *
     * @param students whose it is, where the table says; none where it names somebody who is not in the group
     * @param part of which part, where the table says
     */
    record Cell(Optional<List<String>> students, Optional<String> part, int from, int to, int count, Span source) {}

    private static final int LONGEST_LINE = 400;
    private static final int MOST_COLUMNS = 80;
    /** Lines without a count after which a table has ended. */
    private static final int MOST_EMPTY = 20;

    private static final List<Pattern> SEPARATORS = List.of(
            Pattern.compile("\t"),
            Pattern.compile("\\|"),
            Pattern.compile(";"),
            Pattern.compile(","),
            Pattern.compile(" {2,}"));
    /** A cell that names rounds, beside a sign between cells. */
    private static final Pattern HEAD = Pattern.compile(
            "(?:^|[\\t|;,]| {2}) {0,2}(?:rounds?|rnds?|rd|rows?|r)(?: ?(?:no|nr|number))?[ .]{0,2}(?:\\d{1,3} {0,2})?(?:$|[\\t|;,]| {2})",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern RULE = Pattern.compile("[-|+:= ]{3,}");

    static List<PastedTable> in(String text, Known known) {
        List<PastedTable> tables = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            Span line = line(text, at);
            Optional<PastedTable> table = at(text, line, known);
            table.ifPresent(tables::add);
            at = table.map(found -> found.span().end()).orElse(line.end()) + 1;
        }
        return tables;
    }

    private static Span line(String text, int from) {
        int end = text.indexOf('\n', from);
        return new Span(from, end < 0 ? text.length() : end);
    }

    private static Optional<PastedTable> at(String text, Span head, Known known) {
        boolean possible = head.length() > 2
                && head.length() <= LONGEST_LINE
                && HEAD.matcher(text).region(head.start(), head.end()).find();
        if (!possible) {
            return Optional.empty();
        }
        for (Pattern separator : SEPARATORS) {
            List<Span> heads = cells(text, head, separator);
            if (heads.size() > 1 && heads.stream().anyMatch(cell -> Column.ofRounds(cell.of(text)))) {
                List<Column> columns = heads.stream()
                        .map(cell -> Column.headed(cell.of(text), known))
                        .toList();
                Optional<PastedTable> table =
                        makesSense(columns) ? rows(text, head, separator, columns, known) : Optional.empty();
                if (table.isPresent()) {
                    return table;
                }
            }
        }
        return Optional.empty();
    }

    private static boolean makesSense(List<Column> columns) {
        boolean rounds = has(columns, Column.Kind.ROUND);
        return rounds && (has(columns, Column.Kind.COUNT) || has(columns, Column.Kind.OF_STUDENT))
                || !rounds
                        && has(columns, Column.Kind.OF_ROUND)
                        && (columns.get(0).kind() == Column.Kind.NAME
                                || columns.get(0).kind() == Column.Kind.OTHER);
    }

    private static boolean has(List<Column> columns, Column.Kind kind) {
        return columns.stream().anyMatch(column -> column.kind() == kind);
    }

    private static Optional<PastedTable> rows(
            String text, Span head, Pattern separator, List<Column> columns, Known known) {
        List<Cell> found = new ArrayList<>();
        int end = head.end();
        int empty = 0;
        while (end + 1 < text.length() && empty < MOST_EMPTY) {
            Span line = line(text, end + 1);
            List<Span> cells = line.length() > LONGEST_LINE ? List.of() : cells(text, line, separator);
            boolean rule = RULE.matcher(line.of(text).strip()).matches();
            if (!rule && (cells.size() < 2 || cells.size() > columns.size() + 1)) {
                break;
            }
            List<Cell> counts = rule ? List.of() : new TableRow(text, cells, columns, known).counts();
            found.addAll(counts);
            empty = counts.isEmpty() ? empty + 1 : 0;
            end = line.end();
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(new PastedTable(new Span(head.start(), end), found));
    }

    /** The cells of a line; a sign before the first and after the last is none between cells. */
    private static List<Span> cells(String text, Span line, Pattern separator) {
        List<Span> cells = new ArrayList<>();
        Matcher signs = separator.matcher(text).region(line.start(), line.end());
        int from = line.start();
        while (cells.size() < MOST_COLUMNS && signs.find()) {
            if (!(cells.isEmpty()
                    && new Span(from, signs.start()).of(text).isBlank()
                    && separator.pattern().equals("\\|"))) {
                cells.add(new Span(from, signs.start()));
            }
            from = signs.end();
        }
        if (from < line.end() && !new Span(from, line.end()).of(text).isBlank()) {
            cells.add(new Span(from, line.end()));
        }
        return cells;
    }
}
