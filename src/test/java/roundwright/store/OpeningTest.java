package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.group.CourseId;
import roundwright.group.Student;
import roundwright.group.StudentId;

/** Files that must not be opened: each is refused with its own kind of trouble, and left byte for byte as it was. */
class OpeningTest {
    private static final int USER_VERSION_AT = 60;

    @TempDir
    Path folder;

    private Path good;

    /** Spoils the bytes of a good file. */
    private interface Spoiling {
        byte[] spoil(byte[] good);
    }

    private record Case(String name, Class<? extends StoreException> trouble, Spoiling spoiling) {
        @Override
        public String toString() {
            return name;
        }
    }

    @BeforeEach
    void makeAGoodFile() throws StoreException {
        good = folder.resolve("good.db");
        try (Store store = Store.create(good, folder)) {
            store.transaction(() -> {
                for (int id = 1; id <= 300; id++) {
                    store.courses().insert(new KeptCourse(new CourseId(id), "Course " + id, "# Line\n".repeat(40)));
                    store.students().insert(new Student(new StudentId(id), "Student " + id, false, false, ""));
                }
            });
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("empty", StoreException.Damaged.class, good -> new byte[0]),
                new Case("a few bytes of the heading", StoreException.Damaged.class, good -> Arrays.copyOf(good, 10)),
                new Case("the heading alone", StoreException.Damaged.class, good -> Arrays.copyOf(good, 100)),
                new Case("half", StoreException.Damaged.class, good -> Arrays.copyOf(good, good.length / 2)),
                new Case(
                        "the last page gone",
                        StoreException.Damaged.class,
                        good -> Arrays.copyOf(good, good.length - 4096)),
                new Case("a page of zeros", StoreException.Damaged.class, good -> filled(good, 4096, 8192, 0)),
                new Case("a page of noise", StoreException.Damaged.class, good -> filled(good, 8192, 12288, 0xa5)),
                new Case(
                        "text",
                        StoreException.Foreign.class,
                        good -> "# Acorn\n\nNot a database at all.\n".repeat(50).getBytes(StandardCharsets.UTF_8)),
                new Case("noise", StoreException.Foreign.class, good -> filled(good, 0, good.length, 0x5a)),
                new Case("another program's number", StoreException.Foreign.class, good -> filled(good, 68, 72, 1)),
                new Case("a newer version", StoreException.NewerVersion.class, OpeningTest::newer));
    }

    private static byte[] filled(byte[] good, int from, int to, int with) {
        byte[] bytes = good.clone();
        Arrays.fill(bytes, from, to, (byte) with);
        return bytes;
    }

    private static byte[] newer(byte[] good) {
        byte[] bytes = good.clone();
        ByteBuffer.wrap(bytes).putInt(USER_VERSION_AT, Migrations.KNOWN.newest() + 1);
        return bytes;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedAndLeftAsItWas(Case given) throws IOException {
        Path file = folder.resolve("spoilt.db");
        byte[] bytes = given.spoiling().spoil(Files.readAllBytes(good));
        Files.write(file, bytes);
        List<Path> before = listing();
        StoreException trouble = assertThrows(StoreException.class, () -> open(file));
        assertInstanceOf(given.trouble(), trouble);
        assertTrue(trouble.getMessage().contains("spoilt.db"), trouble.getMessage());
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertEquals(before, listing());
    }

    @Test
    void anotherProgramsDatabaseIsRefusedAndLeftAsItWas() throws SQLException, IOException {
        Path file = folder.resolve("other.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE course (id INTEGER PRIMARY KEY, name TEXT)");
        }
        byte[] bytes = Files.readAllBytes(file);
        assertThrows(StoreException.Foreign.class, () -> open(file));
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void aFolderAndAFileThatIsNotThereAreRefused() {
        assertThrows(StoreException.Foreign.class, () -> open(folder));
        assertThrows(StoreException.Missing.class, () -> open(folder.resolve("none.db")));
        assertThrows(StoreException.Missing.class, () -> open(folder.resolve("none/none.db")));
    }

    @Test
    void aNewFileNeedsAFolderAndAFreeName() throws IOException {
        assertThrows(StoreException.Missing.class, () -> Store.create(folder.resolve("none/new.db"), folder));
        byte[] bytes = Files.readAllBytes(good);
        assertThrows(StoreException.Failed.class, () -> Store.create(good, folder));
        assertArrayEquals(bytes, Files.readAllBytes(good));
    }

    @Test
    void aFileThatWasToldToKeepEditsInASecondFileKeepsThemInOneAgain() throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + good);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
            statement.execute("UPDATE student SET name = 'Oda' WHERE id = 1");
        }
        try (Store store = open(good)) {
            assertEquals("Oda", store.students().all().get(0).name());
            store.transaction(() -> store.settings().insert(new Setting("page", "counts")));
            assertFalse(Files.exists(folder.resolve("good.db-wal")));
        }
        assertEquals(List.of(good), listing());
        open(good).close();
    }

    @Test
    void openingAndClosingChangesNothing() throws IOException, StoreException {
        byte[] bytes = Files.readAllBytes(good);
        open(good).close();
        assertArrayEquals(bytes, Files.readAllBytes(good));
        assertEquals(List.of(good), listing());
    }

    @Test
    void aFileThatIsRemovedWhileOpenTakesNoMoreEdits() throws IOException, StoreException {
        try (Store store = open(good)) {
            Files.delete(good);
            assertThrows(
                    StoreException.Missing.class,
                    () -> store.transaction(() -> store.settings().insert(new Setting("page", "counts"))));
            Path copy = folder.resolve("rescued.db");
            store.copyTo(copy);
            try (Store rescued = open(copy)) {
                assertEquals(300, rescued.courses().all().size());
            }
        }
    }

    @Test
    void aFileThatIsReplacedWhileOpenIsLeftAlone() throws IOException, StoreException {
        try (Store store = open(good)) {
            Path other = Files.writeString(folder.resolve("other"), "another file");
            Files.move(other, good, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            assertThrows(
                    StoreException.Missing.class,
                    () -> store.transaction(() -> store.settings().insert(new Setting("page", "counts"))));
        }
        assertEquals("another file", Files.readString(good));
    }

    @Test
    void whateverBytesAreFlippedTheFileOpensOrIsRefusedAndIsLeftAsItWas() throws IOException {
        long seed = Long.getLong("seed", 5);
        Random chance = new Random(seed);
        byte[] whole = Files.readAllBytes(good);
        int opened = 0;
        for (int run = 0; run < Integer.getInteger("flips", 300); run++) {
            byte[] bytes = whole.clone();
            // half of the flips fall where the file's own form is written
            IntStream.range(0, 1 + chance.nextInt(8))
                    .forEach(flip -> bytes[chance.nextInt(chance.nextBoolean() ? 4096 : bytes.length)] ^=
                            (byte) (1 << chance.nextInt(8)));
            Path file = folder.resolve("flipped.db");
            Files.write(file, bytes);
            opened += opens(file, "seed " + seed + ", run " + run) ? 1 : 0;
            assertArrayEquals(bytes, Files.readAllBytes(file), "seed " + seed + ", run " + run);
        }
        assertTrue(opened > 0 && opened < 300, opened + " opened");
    }

    private boolean opens(Path file, String run) {
        try (Store store = open(file)) {
            store.courses().all();
            store.students().all();
            return true;
        } catch (StoreException refused) {
            return false;
        } catch (RuntimeException unforeseen) {
            throw new AssertionError(run, unforeseen);
        }
    }

    private Store open(Path file) throws StoreException {
        return Store.open(file, folder);
    }

    private List<Path> listing() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
