package roundwright.group.counts;

import java.util.ArrayList;
import java.util.List;
import roundwright.wording.Wording;

/** Rows as they are found, up to as many as there may be. Cells after the last that says something are left out. */
final class RowsTaken {
    private static final Wording WORDS = Wording.of("group");

    private final List<Table.Row> rows = new ArrayList<>();
    private int cells;

    void add(int line, List<String> found) throws NotATable {
        int filled = found.size();
        while (filled > 0 && found.get(filled - 1).isBlank()) {
            filled--;
        }
        if (filled == 0) {
            return;
        }
        cells += filled;
        if (rows.size() >= Table.MOST_ROWS || cells > Table.MOST_CELLS) {
            throw new NotATable(WORDS.say("table.too-large", Table.MOST_ROWS));
        }
        rows.add(new Table.Row(line, found.subList(0, filled)));
    }

    List<Table.Row> rows() {
        return rows;
    }
}
