package roundwright.store;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundwright.wording.Wording;

/** Copies of the whole file by the database's own backup call; one gets its name only when it has been opened and found whole. */
final class Copy {
    private static final Wording WORDS = Wording.of("store");

    private Copy() {}

    static void write(Database database, Path target) throws StoreException {
        Map<String, Integer> rows = rows(database);
        NewFile.make(target, passing -> {
            database.backUpTo(passing);
            check(passing, rows);
        });
    }

    private static void check(Path copy, Map<String, Integer> rows) throws StoreException {
        try (Database opened = Opening.connect(copy)) {
            Soundness.check(opened);
            if (!rows.equals(rows(opened))) {
                throw new StoreException.Damaged(copy, WORDS.say("damaged.copy"), null);
            }
        }
    }

    /** How many rows each table has. */
    static Map<String, Integer> rows(Database database) throws StoreException {
        Map<String, Integer> rows = new LinkedHashMap<>();
        for (String table : tables(database)) {
            rows.put(
                    table,
                    database.query("SELECT count(*) AS n FROM " + table, row -> row.number("n"))
                            .get(0));
        }
        return rows;
    }

    /** Every table, in the order in which they came into being. */
    static List<String> tables(Database database) throws StoreException {
        return database.query(
                "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid",
                row -> row.text("name"));
    }
}
