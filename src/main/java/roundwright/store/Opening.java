package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;

/** Opens files: looks at them from outside first, takes the lock, checks them whole, and only then writes. */
final class Opening {
    /** "Rndw": names the files of this program among all SQLite files. */
    static final int APPLICATION_ID = 0x526e6477;

    private static final int BUSY_MILLISECONDS = 5_000;

    /** Whoever has the file open has it for hours, so there is no use in waiting long at the door. */
    private static final int DOOR_MILLISECONDS = 500;

    private Opening() {}

    static Database open(Path file, Migrations migrations) throws StoreException {
        checkFromOutside(file, migrations);
        Database database = connect(file);
        try {
            lock(database);
            checkVersion(file, version(database), migrations);
            Soundness.check(database);
            // another program may have told the file to keep its newest edits in a second file
            database.execute("PRAGMA journal_mode = DELETE");
            database.execute("PRAGMA busy_timeout = " + BUSY_MILLISECONDS);
            Permissions.forTheOwnerAlone(file);
            NewFile.sweep(file);
            return database;
        } catch (StoreException | RuntimeException failure) {
            closeQuietly(database, failure);
            throw failure;
        }
    }

    /** Makes a new, empty file with the newest form. */
    static void make(Path file, Migrations migrations) throws StoreException {
        try (Database database = connect(file)) {
            database.execute("PRAGMA application_id = " + APPLICATION_ID);
            migrations.apply(database, 0);
        }
    }

    static int version(Database database) throws StoreException {
        return database.query("PRAGMA user_version", row -> row.number("user_version"))
                .get(0);
    }

    private static void checkFromOutside(Path file, Migrations migrations) throws StoreException {
        if (Files.isDirectory(file)) {
            throw StoreException.Foreign.folder(file);
        }
        if (!Files.exists(file)) {
            throw StoreException.Missing.file(file);
        }
        checkForm(file, migrations);
        if (!Files.isWritable(file) || !Files.isWritable(file.toAbsolutePath().getParent())) {
            throw new StoreException.ReadOnly(file, null);
        }
    }

    /** Whether it is a file of this program, of a version that it knows; only its first bytes are read. */
    static void checkForm(Path file, Migrations migrations) throws StoreException {
        Heading heading = Heading.of(file);
        if (heading.applicationId() != APPLICATION_ID) {
            throw new StoreException.Foreign(file);
        }
        if (!interrupted(file)) {
            checkVersion(file, heading.version(), migrations);
        }
    }

    /** Whether the last work on it did not come to its end: its first bytes may be of a state that is going to be taken back. */
    private static boolean interrupted(Path file) throws StoreException {
        Path journal = file.resolveSibling(file.getFileName() + "-journal");
        try {
            return Files.exists(journal) && Files.size(journal) > 0;
        } catch (IOException failure) {
            throw Failures.of(journal, failure);
        }
    }

    private static void checkVersion(Path file, int version, Migrations migrations) throws StoreException {
        if (version > migrations.newest()) {
            throw new StoreException.NewerVersion(file, version, migrations.newest());
        }
    }

    static Database connect(Path file) throws StoreException {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(DOOR_MILLISECONDS);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setLockingMode(SQLiteConfig.LockingMode.EXCLUSIVE);
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        // what an edit wrote over would else stand in the journal until the file is closed, or in a temporary file
        config.setJournalSizeLimit(0);
        config.setTempStore(SQLiteConfig.TempStore.MEMORY);
        try {
            // asked for by its name: looking for drivers in all that the program brings takes longer than opening the
            // file
            Connection connection = JDBC.createConnection(JDBC.PREFIX + file.toAbsolutePath(), config.toProperties());
            return new Database(file, connection);
        } catch (SQLException failure) {
            throw Failures.of(file, failure);
        }
    }

    /** Takes the file for this program alone until it is closed. The lock is the system's own: it ends with the process, however that ends. */
    private static void lock(Database database) throws StoreException {
        database.execute("BEGIN EXCLUSIVE");
        database.execute("COMMIT");
    }

    private static void closeQuietly(Database database, Throwable reason) {
        try {
            database.close();
        } catch (StoreException second) {
            reason.addSuppressed(second);
        }
    }
}
