package roundwright.group.counts;

import java.time.LocalDateTime;
import java.util.List;

/**
 * A table on its way out.
 *
 * @param name of its sheet in a spreadsheet
 * @param rows of cells, the first the headings
 */
public record OutTable(String name, List<List<Cell>> rows) {
    /** What a cell holds. */
    public sealed interface Cell {
        record Words(String words) implements Cell {}

        record Whole(int number) implements Cell {}

        record At(LocalDateTime time) implements Cell {}
    }

    public OutTable {
        rows = List.copyOf(rows);
    }

    static Cell words(String words) {
        return new Cell.Words(words);
    }

    static Cell whole(int number) {
        return new Cell.Whole(number);
    }
}
