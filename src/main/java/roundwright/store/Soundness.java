package roundwright.store;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.wording.Wording;

/** Whether a file is whole: its pages, its rows, and what its rows point at. */
final class Soundness {
    private static final Wording WORDS = Wording.of("store");

    private static final Pattern UNREAD = Pattern.compile("unable to get the page\\. error code=(\\d{1,9})");

    private Soundness() {}

    static void check(Database database) throws StoreException {
        List<String> findings = database.query("PRAGMA quick_check(1)", row -> row.text("quick_check"));
        for (String finding : findings) {
            Matcher unread = UNREAD.matcher(finding);
            if (unread.find()) {
                // the disk would not give a page: that says nothing of what is on it
                throw Failures.of(database.file(), Integer.parseInt(unread.group(1)), finding);
            }
        }
        if (!findings.equals(List.of("ok"))) {
            throw new StoreException.Damaged(database.file(), WORDS.say("damaged.pages"), null);
        }
        checkReferences(database);
    }

    static void checkReferences(Database database) throws StoreException {
        List<String> dangling = database.query("PRAGMA foreign_key_check", row -> row.text("table"));
        if (!dangling.isEmpty()) {
            String where = String.join(", ", dangling.stream().distinct().toList());
            throw new StoreException.Damaged(database.file(), WORDS.say("damaged.references", where), null);
        }
    }
}
