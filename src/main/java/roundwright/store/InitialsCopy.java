package roundwright.store;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import roundwright.group.StudentId;

/**
 * A copy in which students go by their initials. What may stay is listed; whatever text is not listed is emptied, so that what is
 * added to the file later stays out of such copies until somebody has thought about it.
 */
final class InitialsCopy {
    private static final Map<String, Set<String>> STAYS = Map.of(
            "course", Set.of("name", "text"),
            "course_group", Set.of("name", "start"),
            "student", Set.of(),
            "enrolment", Set.of(),
            "session", Set.of("date"),
            "register", Set.of("attendance"),
            "report", Set.of("part", "kind", "at", "withdrawn"),
            "answer", Set.of("check_name", "answer"),
            "setting", Set.of("name", "value"));

    private InitialsCopy() {}

    static void write(Database database, Path target, Map<StudentId, String> called) throws StoreException {
        NewFile.make(target, passing -> {
            database.backUpTo(passing);
            try (Database copy = Opening.connect(passing)) {
                copy.transaction(() -> rename(copy, called));
                copy.writeAnew();
                Soundness.check(copy);
            }
        });
    }

    private static void rename(Database copy, Map<StudentId, String> called) throws StoreException {
        for (String table : Copy.tables(copy)) {
            if (STAYS.containsKey(table)) {
                emptyText(copy, table);
            } else {
                copy.change("DELETE FROM " + table);
            }
        }
        for (Map.Entry<StudentId, String> student : called.entrySet()) {
            copy.write(
                    1,
                    "UPDATE student SET name = ? WHERE id = ?",
                    student.getValue(),
                    student.getKey().value());
        }
    }

    private static void emptyText(Database copy, String table) throws StoreException {
        for (String column : copy.query(
                "SELECT name FROM pragma_table_info(?) WHERE type = 'TEXT'", row -> row.text("name"), table)) {
            boolean name = table.equals("student") && column.equals("name");
            if (!name && !STAYS.get(table).contains(column)) {
                copy.change("UPDATE " + table + " SET " + column + " = ''");
            }
        }
    }
}
