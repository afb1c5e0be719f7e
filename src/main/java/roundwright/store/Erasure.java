package roundwright.store;

import java.util.ArrayList;
import java.util.List;
import roundwright.group.StudentId;

/**
 * Erases a student from a file of whatever version: their rows wherever they stand, and what hangs on them. The file is then
 * written anew, so that nothing of them stays behind in pages that are no longer used.
 */
final class Erasure {
    private Erasure() {}

    /** Erases the student and says how many rows went; where there is no such student, the file is left as it is. */
    static int of(Database database, StudentId student) throws StoreException {
        if (database.query("SELECT id FROM student WHERE id = ?", row -> row.id("id"), student.value())
                .isEmpty()) {
            return 0;
        }
        List<Integer> gone = new ArrayList<>();
        // rows go table by table, in no order that the references would agree with
        database.execute("PRAGMA foreign_keys = OFF");
        try {
            database.transaction(() -> gone.add(rows(database, student)));
        } finally {
            database.execute("PRAGMA foreign_keys = ON");
        }
        database.writeAnew();
        return gone.get(0);
    }

    private static int rows(Database database, StudentId student) throws StoreException {
        int gone = 0;
        for (String table : tablesWith(database, "report_id")) {
            gone += database.change(
                    "DELETE FROM " + table + " WHERE report_id IN (SELECT id FROM report WHERE student_id = ?)",
                    student.value());
        }
        for (String table : tablesWith(database, "student_id")) {
            gone += database.change("DELETE FROM " + table + " WHERE student_id = ?", student.value());
        }
        gone += database.change("DELETE FROM student WHERE id = ?", student.value());
        Soundness.checkReferences(database);
        return gone;
    }

    private static List<String> tablesWith(Database database, String column) throws StoreException {
        List<String> found = new ArrayList<>();
        for (String table : Copy.tables(database)) {
            if (!database.query(
                            "SELECT name FROM pragma_table_info(?) WHERE name = ?",
                            row -> row.text("name"),
                            table,
                            column)
                    .isEmpty()) {
                found.add(table);
            }
        }
        return found;
    }
}
