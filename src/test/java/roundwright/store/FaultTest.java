package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the machine may refuse: a full disk, a file or a folder that may only be read. */
class FaultTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void makeAFile() throws StoreException {
        file = folder.resolve("trial.db");
        Store.create(file, folder).close();
    }

    @Test
    void aFullDiskTakesNothingAndLosesNothing() throws StoreException {
        Database database = Opening.open(file, Migrations.KNOWN);
        SettingStore settings = new SettingStore(database);
        database.transaction(() -> settings.insert(new Setting("page", "counts")));
        database.execute("PRAGMA max_page_count = " + pages(database));
        Setting large = new Setting("large", "x".repeat(100_000));
        StoreException.Full full =
                assertThrows(StoreException.Full.class, () -> database.transaction(() -> settings.insert(large)));
        assertEquals(true, full.getMessage().contains("no room left"), full.getMessage());
        assertEquals(List.of(new Setting("page", "counts")), settings.all());
        database.execute("PRAGMA max_page_count = 1000000");
        database.transaction(() -> settings.insert(large));
        database.close();
        try (Store store = Store.open(file, folder)) {
            assertEquals(2, store.settings().all().size());
        }
    }

    private static int pages(Database database) throws StoreException {
        return database.query("PRAGMA page_count", row -> row.number("page_count"))
                .get(0);
    }

    @Test
    void aNewFileIsForItsOwnerAlone() throws IOException {
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void aFileThatMayOnlyBeReadIsRefused() throws IOException {
        readOnly(file, "r--------");
        byte[] bytes = Files.readAllBytes(file);
        assertThrows(StoreException.ReadOnly.class, () -> Store.open(file, folder));
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void aFolderThatMayOnlyBeReadIsRefused() throws IOException {
        readOnly(folder, "r-x------");
        try {
            assertThrows(StoreException.ReadOnly.class, () -> Store.open(file, folder));
            assertThrows(StoreException.ReadOnly.class, () -> Store.create(folder.resolve("new.db"), folder));
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    private static void readOnly(Path path, String permissions) throws IOException {
        assumeTrue(path.getFileSystem().supportedFileAttributeViews().contains("posix"));
        assumeFalse("root".equals(System.getProperty("user.name")), "nothing is read-only for root");
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }
}
