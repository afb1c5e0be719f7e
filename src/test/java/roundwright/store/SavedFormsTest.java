package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A file as it was saved by each version of the program still opens, holds all that it held, and is then of the same form as a new
 * one. The files are in the test resources, {@code store/form-N.db}, beside the rows that each has to hold. A new version needs a new
 * file: the first run writes it, and fails.
 */
class SavedFormsTest {
    private static final Path SAVED = Path.of("src/test/resources/roundwright/store");

    @TempDir
    Path folder;

    static Stream<Integer> versions() {
        return IntStream.rangeClosed(1, Migrations.KNOWN.newest()).boxed();
    }

    @ParameterizedTest
    @MethodSource("versions")
    void opensAndHoldsWhatItHeld(int version) throws IOException, StoreException {
        Path saved = SAVED.resolve("form-" + version + ".db");
        Path rows = SAVED.resolve("form-" + version + ".txt");
        if (Files.notExists(saved)) {
            write(saved, rows);
            fail("there was no file of version " + version + "; it has been written, look at it and keep it");
        }
        Path file = Files.copy(saved, folder.resolve("old.db"));
        try (Store store = Store.open(file, folder.resolve("backups"))) {
            assertEquals(Files.readString(rows), rows(store));
        }
        Path fresh = folder.resolve("fresh.db");
        Store.create(fresh, folder).close();
        assertEquals(form(fresh), form(file));
        int backups = version == Migrations.KNOWN.newest() ? 0 : 1;
        assertEquals(
                backups,
                new Backups(folder.resolve("backups"), file).newestFirst().size());
    }

    private static void write(Path saved, Path rows) throws IOException, StoreException {
        Files.createDirectories(SAVED);
        try (Store store = Store.create(saved, SAVED)) {
            UglyFile.fill(store);
            Files.writeString(rows, rows(store));
        }
    }

    private static String rows(Store store) throws StoreException {
        List<String> rows = new ArrayList<>();
        for (Shelf<?> shelf : List.of(
                store.courses(),
                store.groups(),
                store.students(),
                store.enrolments(),
                store.sessions(),
                store.register(),
                store.reports(),
                store.notes(),
                store.settings())) {
            shelf.all().forEach(value -> rows.add(value.toString()));
        }
        return String.join("\n", rows) + "\n";
    }

    private static List<String> form(Path file) throws StoreException {
        try (Database database = Opening.open(file, Migrations.KNOWN)) {
            List<String> form = new ArrayList<>(database.query(
                    "SELECT type || ' ' || name || ': ' || sql AS line FROM sqlite_master WHERE sql IS NOT NULL"
                            + " ORDER BY name",
                    row -> row.text("line")));
            form.add("version " + Opening.version(database));
            form.add("application " + database.query("PRAGMA application_id", row -> row.number("application_id")));
            return form;
        }
    }
}
