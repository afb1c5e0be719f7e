package roundwright.workbook;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.store.Backup;
import roundwright.store.Backups;
import roundwright.store.PreparedCopy;
import roundwright.store.Rescue;
import roundwright.store.SetAside;
import roundwright.store.StoreException;

/**
 * What can be done when a file cannot be opened because it is damaged. In either case the damaged file is set aside as it is, beside
 * the new one.
 */
public final class Mending {
    /**
     * A file that can be opened again.
     *
     * @param damaged where the damaged file is now
     * @param told what was saved and what was not, a sentence each
     */
    public record Mended(Path damaged, List<String> told) {}

    private Mending() {}

    /** The newest backup that can be opened, and is whole. */
    public static Optional<Backup> newestGood(Path file, Path backups) throws StoreException {
        for (Backup backup : new Backups(backups, file).newestFirst()) {
            try {
                PreparedCopy.of(backup.file(), file).close();
                return Optional.of(backup);
            } catch (StoreException notThisOne) {
                // an older one may be whole
            }
        }
        return Optional.empty();
    }

    /** Saves what can be read of the file into a new one in its place. */
    public static Mended rescue(Path file, Instant now) throws StoreException {
        List<String> told = new ArrayList<>();
        Path aside = SetAside.replace(
                file, now, fresh -> told.addAll(Rescue.of(file, fresh).sentences()));
        return new Mended(aside, told);
    }

    /** Puts a backup in the place of the file. */
    public static Mended fromBackup(Path file, Path backup, Instant now) throws StoreException {
        Path aside = SetAside.replace(file, now, fresh -> {
            try (PreparedCopy copy = PreparedCopy.of(backup, fresh)) {
                copy.store().copyTo(fresh);
            }
        });
        return new Mended(aside, List.of());
    }
}
