package roundwright.group.counts;

import java.util.List;

/**
 * Rows of cells, as they were found.
 *
 * @param name of the sheet in a spreadsheet; empty of a text
 * @param rows every row that is not blank, the one with the headings too
 * @param openQuote line of a quotation mark that is never closed, else 0; from there on quotation marks are taken for letters
 */
public record Table(String name, List<Row> rows, int openQuote) {
    /** More rows than any year of any teacher has. */
    public static final int MOST_ROWS = 200_000;

    /** What fits into the memory of a small computer with room to spare. */
    static final int MOST_CELLS = 4_000_000;

    private static final int LOOKED_AT = 1_000;

    /**
     * One row.
     *
     * @param line number of the line, or in a spreadsheet of the row, that it begins on, from 1
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The cell of a column from 0; blank where the row is too short. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }

        boolean blank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    public Table {
        rows = List.copyOf(rows);
    }

    /** A table out of a text, such as a block copied from a spreadsheet. */
    public static Table of(String text) throws NotATable {
        return SeparatedText.table(text);
    }

    /** A block of cells out of a spreadsheet: between them are tabs, whatever is in them. */
    public static Table ofBlock(String text) throws NotATable {
        return SeparatedText.table(text, '\t');
    }

    /** How many columns the widest of the first rows has. */
    public int columns() {
        return rows.stream()
                .limit(LOOKED_AT)
                .mapToInt(row -> row.cells().size())
                .max()
                .orElse(0);
    }
}
