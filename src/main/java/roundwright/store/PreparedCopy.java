package roundwright.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A passing copy of a backup, checked and brought up to date, to be looked into or taken over. The backup itself is only read, so it
 * may lie on a medium that cannot be written.
 */
public final class PreparedCopy implements AutoCloseable {
    private final Path passing;
    private final Store store;

    private PreparedCopy(Path passing, Store store) {
        this.passing = passing;
        this.store = store;
    }

    /**
     * Copies a backup, for a while, to where another file is kept, or is to be.
     *
     * @throws StoreException where the backup is not one of ours, newer, or damaged
     */
    public static PreparedCopy of(Path backup, Path beside) throws StoreException {
        if (!Files.isRegularFile(backup)) {
            throw Files.isDirectory(backup)
                    ? StoreException.Foreign.folder(backup)
                    : StoreException.Missing.file(backup);
        }
        Path passing = NewFile.passing(beside);
        boolean whole = false;
        try {
            Opening.checkForm(backup, Migrations.KNOWN);
            copy(backup, passing);
            PreparedCopy prepared = new PreparedCopy(passing, Store.upToDate(passing, Migrations.KNOWN));
            whole = true;
            return prepared;
        } catch (StoreException.Damaged damaged) {
            throw new StoreException.Damaged(backup, damaged.how(), damaged);
        } finally {
            if (!whole) {
                NewFile.remove(passing);
            }
        }
    }

    private static void copy(Path backup, Path passing) throws StoreException {
        Permissions.makeFile(passing);
        Path journal = backup.resolveSibling(backup.getFileName() + "-journal");
        try {
            pour(backup, passing);
            if (Files.exists(journal)) {
                Path beside = passing.resolveSibling(passing.getFileName() + "-journal");
                Permissions.makeFile(beside);
                pour(journal, beside);
            }
        } catch (NoSuchFileException gone) {
            throw StoreException.Missing.file(backup);
        } catch (IOException failure) {
            throw Failures.of(backup, failure);
        }
    }

    private static void pour(Path from, Path into) throws IOException {
        try (OutputStream out = Files.newOutputStream(into)) {
            Files.copy(from, out);
        }
    }

    /** The copy, open. */
    public Store store() {
        return store;
    }

    Path file() {
        return passing;
    }

    @Override
    public void close() throws StoreException {
        try {
            store.close();
        } finally {
            NewFile.remove(passing);
        }
    }
}
