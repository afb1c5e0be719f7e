package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** Brings a file of an older version up to date, with a backup first. */
final class Upgrade {
    private Upgrade() {}

    static void ifOlder(Database database, Path backups, Migrations migrations) throws StoreException {
        int version = Opening.version(database);
        if (version < migrations.newest()) {
            backUp(database, backups, version);
            migrations.apply(database, version);
            Soundness.check(database);
        }
    }

    private static void backUp(Database database, Path backups, int version) throws StoreException {
        try {
            Files.createDirectories(backups);
            Instant written = Files.getLastModifiedTime(database.file()).toInstant();
            Path target = backups.resolve(Backup.name(database.file(), version, written));
            if (!Files.exists(target)) {
                Backup.write(database, target);
            }
        } catch (IOException failure) {
            throw new StoreException.Failed(backups, failure.toString(), failure);
        }
    }
}
