package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.Student;
import roundwright.group.StudentId;

class MigrationsTest {
    @TempDir
    Path folder;

    @Test
    void everyTableIsOfStrictTypes() throws SQLException, StoreException {
        Path file = fresh();
        assertEquals(
                List.of(),
                ask(
                        file,
                        "SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0"
                                + " AND name NOT LIKE 'sqlite_%'"));
        assertEquals(List.of(Integer.toString(Migrations.KNOWN.newest())), ask(file, "PRAGMA user_version"));
        assertEquals(List.of(Integer.toString(Opening.APPLICATION_ID)), ask(file, "PRAGMA application_id"));
        assertEquals(List.of("delete"), ask(file, "PRAGMA journal_mode"));
    }

    /** A column that others point at, or that is pointed from, without an index makes every removal look through all rows. */
    @Test
    void everyForeignKeyHasAnIndex() throws SQLException, StoreException {
        Path file = fresh();
        List<String> bare = new ArrayList<>();
        for (String table : ask(file, "SELECT name FROM sqlite_master WHERE type = 'table'")) {
            for (String column : ask(file, "SELECT \"from\" FROM pragma_foreign_key_list('" + table + "')")) {
                if (ask(file, indexed(table, column)).equals(List.of("0"))) {
                    bare.add(table + "." + column);
                }
            }
        }
        assertEquals(List.of(), bare);
    }

    private static String indexed(String table, String column) {
        return "SELECT count(*) FROM pragma_index_list('" + table + "') AS list, pragma_index_info(list.name) AS info"
                + " WHERE info.name = '" + column + "'";
    }

    /** A step of the future, to try the way there. */
    private record SecondForm(String script) implements Migration {
        @Override
        public int version() {
            return 2;
        }

        @Override
        public void apply(Database database) throws StoreException {
            database.execute("ALTER TABLE student ADD COLUMN hook TEXT NOT NULL DEFAULT ''");
            database.execute(script);
        }
    }

    private static Migrations withSecond(String script) {
        return new Migrations(List.of(new FirstForm(), new SecondForm(script)));
    }

    @Test
    void anOlderFileIsBackedUpAndBroughtUpToDate() throws SQLException, StoreException, IOException {
        Path file = withStudent();
        Path backups = folder.resolve("backups");
        Store.open(file, backups, withSecond("CREATE TABLE hook (size TEXT) STRICT"))
                .close();
        assertEquals(List.of("2"), ask(file, "PRAGMA user_version"));
        assertEquals(List.of("Ines"), ask(file, "SELECT name FROM student WHERE hook = ''"));
        Path backup = listing(backups).get(0);
        assertEquals(List.of("Ines"), ask(backup, "SELECT name FROM student"));
        assertEquals(List.of("1"), ask(backup, "PRAGMA user_version"));
        assertEquals(ask(made(withSecond("CREATE TABLE hook (size TEXT) STRICT")), FORM), ask(file, FORM));
    }

    @Test
    void aStepThatFailsLeavesTheOldFile() throws SQLException, StoreException, IOException {
        Path file = withStudent();
        byte[] bytes = Files.readAllBytes(file);
        assertThrows(
                StoreException.class,
                () -> Store.open(file, folder.resolve("backups"), withSecond("INSERT INTO nowhere VALUES (1)")));
        assertArrayEquals(bytes, Files.readAllBytes(file));
        Store.open(file, folder).close();
    }

    @Test
    void aStepThatLeavesReferencesDanglingIsTakenBack() throws StoreException, SQLException {
        Path file = withStudent();
        assertThrows(
                StoreException.Damaged.class,
                () -> Store.open(
                        file, folder.resolve("backups"), withSecond("INSERT INTO enrolment VALUES (7, 7, 1)")));
        assertEquals(List.of("1"), ask(file, "PRAGMA user_version"));
    }

    private static final String FORM = "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name";

    private Path made(Migrations migrations) throws StoreException {
        Path file = folder.resolve("made.db");
        Opening.make(file, migrations);
        return file;
    }

    private Path withStudent() throws StoreException {
        Path file = fresh();
        try (Store store = Store.open(file, folder)) {
            store.transaction(() -> store.students().insert(new Student(new StudentId(1), "Ines", false, false, "")));
        }
        return file;
    }

    private static List<Path> listing(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private Path fresh() throws StoreException {
        Path file = folder.resolve("fresh.db");
        Store.create(file, folder).close();
        return file;
    }

    private static List<String> ask(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            List<String> answers = new ArrayList<>();
            while (rows.next()) {
                answers.add(rows.getString(1));
            }
            return answers;
        }
    }
}
