package roundwright.store;

import java.util.List;
import roundwright.wording.Wording;

/** Whether a file is whole: its pages, its rows, and what its rows point at. */
final class Soundness {
    private static final Wording WORDS = Wording.of("store");

    private Soundness() {}

    static void check(Database database) throws StoreException {
        List<String> findings = database.query("PRAGMA quick_check(1)", row -> row.text("quick_check"));
        if (!findings.equals(List.of("ok"))) {
            throw damaged(database, String.join("; ", findings));
        }
        checkReferences(database);
    }

    static void checkReferences(Database database) throws StoreException {
        List<String> dangling = database.query("PRAGMA foreign_key_check", row -> row.text("table"));
        if (!dangling.isEmpty()) {
            throw damaged(
                    database, String.join(", ", dangling.stream().distinct().toList()));
        }
    }

    private static StoreException damaged(Database database, String finding) {
        return new StoreException.Damaged(database.file(), WORDS.say("damaged.check", finding), null);
    }
}
