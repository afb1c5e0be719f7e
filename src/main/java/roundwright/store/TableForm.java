package roundwright.store;

import java.util.ArrayList;
import java.util.List;
import roundwright.store.pages.FoundRow;

/**
 * How the rows of one table stand in the file.
 *
 * @param name the table
 * @param columns in the order in which they are stored
 * @param numbered whether each row has a number of its own, which one of the columns is
 */
record TableForm(String name, List<Column> columns, boolean numbered) {
    /**
     * One column.
     *
     * @param text whether it holds text; else a whole number
     * @param number whether it is the row's number, which stands beside the record
     * @param needed whether it may not be empty
     */
    record Column(String name, boolean text, boolean number, boolean needed) {
        boolean fits(Object value) {
            if (value == null) {
                return number || !needed;
            }
            return text ? value instanceof String : value instanceof Long;
        }
    }

    /** The tables of an open file. */
    static List<TableForm> of(Database database) throws StoreException {
        List<TableForm> forms = new ArrayList<>();
        for (String table : Copy.tables(database)) {
            boolean numbered = database.query(
                            "SELECT wr FROM pragma_table_list(?) WHERE schema = 'main'", row -> row.number("wr"), table)
                    .equals(List.of(0));
            List<Column> columns = columns(database, table, numbered);
            forms.add(new TableForm(table, columns, numbered));
        }
        return forms;
    }

    /** Tables without numbers of their own store the columns of their key first. */
    private static List<Column> columns(Database database, String table, boolean numbered) throws StoreException {
        String order = numbered ? "cid" : "CASE WHEN pk = 0 THEN 1000 + cid ELSE pk END";
        return database.query(
                "SELECT name, type, pk, \"notnull\" AS needed FROM pragma_table_info(?) ORDER BY " + order,
                row -> new Column(
                        row.text("name"),
                        row.text("type").equals("TEXT"),
                        numbered && row.number("pk") == 1 && row.text("type").equals("INTEGER"),
                        row.flag("needed")),
                table);
    }

    /** Whether a row that was found could be one of this table. Columns that came later may be missing at the end. */
    boolean fits(FoundRow row) {
        if (row.id().isPresent() != numbered || row.values().size() != columns.size()) {
            return false;
        }
        for (int place = 0; place < columns.size(); place++) {
            if (!columns.get(place).fits(row.values().get(place))) {
                return false;
            }
        }
        return true;
    }

    /** The values of a row, its own number in its place. */
    Object[] values(FoundRow row) {
        Object[] values = row.values().toArray();
        for (int place = 0; place < columns.size(); place++) {
            if (columns.get(place).number()) {
                values[place] = row.id().orElseThrow();
            }
        }
        return values;
    }

    Object value(Object[] values, String column) {
        for (int place = 0; place < columns.size(); place++) {
            if (columns.get(place).name().equals(column)) {
                return values[place];
            }
        }
        throw new IllegalArgumentException(name + " has no column " + column);
    }

    String insertion() {
        String names = String.join(", ", columns.stream().map(Column::name).toList());
        return "INSERT OR IGNORE INTO " + name + " (" + names + ") VALUES (?" + ", ?".repeat(columns.size() - 1) + ")";
    }
}
