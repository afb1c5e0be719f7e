package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Every step the file's form has taken, in order. A new file takes them all. */
final class Migrations {
    private static final List<Migration> STEPS = List.of(new FirstForm());

    /** The version this program writes. */
    static final int NEWEST = STEPS.get(STEPS.size() - 1).version();

    private Migrations() {}

    /** Takes the file from a version to the newest, whole or not at all. */
    static void apply(Database database, int from) throws StoreException {
        // has no effect inside a transaction, and a table that is rebuilt would take its children's rows with it
        database.execute("PRAGMA foreign_keys = OFF");
        try {
            database.transaction(() -> takeSteps(database, from));
        } finally {
            database.execute("PRAGMA foreign_keys = ON");
        }
    }

    private static void takeSteps(Database database, int from) throws StoreException {
        for (Migration step : STEPS) {
            if (step.version() > from) {
                step.apply(database);
            }
        }
        database.execute("PRAGMA user_version = " + NEWEST);
        Soundness.checkReferences(database);
    }

    static String script(int version) {
        String path = "/roundwright/schema/" + version + ".sql";
        try (InputStream stream = Migrations.class.getResourceAsStream(path)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(path, failure);
        }
    }
}
