package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** Brings a file of an older version up to date, with a backup first where there is a folder for one. */
final class Upgrade {
    private Upgrade() {}

    static void ifOlder(Database database, Optional<Path> backups, Migrations migrations) throws StoreException {
        int version = Opening.version(database);
        if (version < migrations.newest()) {
            if (backups.isPresent()) {
                backUp(database, backups.get(), version);
            }
            migrations.apply(database, version);
            Soundness.check(database);
        }
    }

    private static void backUp(Database database, Path backups, int version) throws StoreException {
        try {
            // an upgrade that fails is tried again at each start; one copy of what it found is enough
            Instant written = Files.getLastModifiedTime(database.file()).toInstant();
            Backups copies = new Backups(backups, database.file());
            if (copies.made(version, written).isEmpty()) {
                copies.make(database, written);
            }
        } catch (IOException failure) {
            throw Failures.of(backups, failure);
        }
    }
}
