package roundwright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundwright.wording.Wording;

/**
 * Fills the holes of a rescued file: a student, group or course whose row is lost, and of whom others speak, gets a made-up name; what
 * speaks of anything else that is lost goes.
 */
final class StandIns {
    private static final Wording WORDS = Wording.of("store");
    private static final String ENROLMENTS = """
            INSERT OR IGNORE INTO enrolment (group_id, student_id, place)
            SELECT DISTINCT group_id, student_id, 1000 + student_id FROM %s""";

    private final Database database;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> dropped = new LinkedHashMap<>();

    StandIns(Database database) {
        this.database = database;
    }

    /** What the stand-ins are called. */
    List<String> names() {
        return names;
    }

    /** Rows of each table that spoke of something lost, and went. */
    Map<String, Integer> dropped() {
        return dropped;
    }

    void fill() throws StoreException {
        for (String table : List.of("report", "note", "register")) {
            database.change(ENROLMENTS.formatted(table));
        }
        String student = "INSERT INTO student (id, name, left_handed, large_print, note) VALUES (?, ?, 0, 0, '')";
        for (long id : missing("enrolment", "student_id", "student")) {
            database.write(1, student, id, named("student", id));
        }
        for (String table : List.of("enrolment", "session")) {
            for (long id : missing(table, "group_id", "course_group")) {
                String group =
                        "INSERT INTO course_group (id, course_id, name, start, place) VALUES (?, ?, ?, NULL, '')";
                database.write(1, group, id, anyCourse(), named("group", id));
            }
        }
        for (long id : missing("course_group", "course_id", "course")) {
            String name = named("course", id);
            database.write(1, "INSERT INTO course (id, name, text) VALUES (?, ?, ?)", id, name, "# " + name + "\n");
        }
        dropDangling();
    }

    private List<Long> missing(String table, String column, String parent) throws StoreException {
        return database.query(
                "SELECT DISTINCT " + column + " AS id FROM " + table + " WHERE " + column + " NOT IN (SELECT id FROM "
                        + parent + ") ORDER BY 1",
                row -> row.id("id"));
    }

    /** A group whose course is not known takes the first there is. */
    private long anyCourse() throws StoreException {
        return database.query("SELECT coalesce(min(id), 1) AS id FROM course", row -> row.id("id"))
                .get(0);
    }

    private String named(String key, long id) {
        String name = WORDS.say("stand-in." + key, id);
        names.add(name);
        return name;
    }

    /** Whatever still speaks of something that is not there. */
    private void dropDangling() throws StoreException {
        for (String table : Copy.tables(database)) {
            for (ForeignKey key : keys(table)) {
                int rows = database.change("DELETE FROM " + table + " WHERE " + key.column() + " IS NOT NULL AND ("
                        + key.columns() + ") NOT IN (SELECT " + key.targets() + " FROM " + key.parent() + ")");
                if (rows > 0) {
                    dropped.merge(table, rows, Integer::sum);
                }
            }
        }
    }

    private record ForeignKey(String parent, String columns, String targets) {
        String column() {
            return columns.split(",")[0];
        }
    }

    private List<ForeignKey> keys(String table) throws StoreException {
        return database.query(
                """
                SELECT "table" AS parent, group_concat("from", ',') AS columns, group_concat("to", ',') AS targets
                FROM (SELECT * FROM pragma_foreign_key_list(?) ORDER BY id, seq) GROUP BY id""", row -> new ForeignKey(row.text("parent"), row.text("columns"), row.text("targets")), table);
    }
}
