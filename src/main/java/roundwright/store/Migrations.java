package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The steps that the file's form has taken, in order. A new file takes them all. */
record Migrations(List<Migration> steps) {
    /** Every step there has been. */
    static final Migrations KNOWN = new Migrations(List.of(new FirstForm()));

    Migrations {
        steps = List.copyOf(steps);
        for (int index = 0; index < steps.size(); index++) {
            if (steps.get(index).version() != index + 1) {
                throw new IllegalArgumentException("step " + (index + 1) + " leads to version "
                        + steps.get(index).version());
            }
        }
    }

    /** The version that the last step leads to. */
    int newest() {
        return steps.size();
    }

    /** The steps up to a version, by which files of that version were made. */
    Migrations upTo(int version) {
        return new Migrations(steps.subList(0, version));
    }

    /** Takes the file from a version to the newest, whole or not at all. */
    void apply(Database database, int from) throws StoreException {
        // has no effect inside a transaction, and a table that is rebuilt would take its children's rows with it
        database.execute("PRAGMA foreign_keys = OFF");
        try {
            database.transaction(() -> takeSteps(database, from));
        } finally {
            database.execute("PRAGMA foreign_keys = ON");
        }
    }

    private void takeSteps(Database database, int from) throws StoreException {
        for (Migration step : steps) {
            if (step.version() > from) {
                step.apply(database);
            }
        }
        database.execute("PRAGMA user_version = " + newest());
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
