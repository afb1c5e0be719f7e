package roundwright.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import roundwright.wording.Wording;

/** Turns the database's own words into the kinds of trouble a person can do something about. */
final class Failures {
    private static final Wording WORDS = Wording.of("store");
    private static final int PRIMARY = 0xff;

    private Failures() {}

    static StoreException of(Path file, SQLException failure) {
        int code = failure instanceof SQLiteException sqlite ? sqlite.getResultCode().code : -1;
        return of(file, code, failure.getMessage(), failure);
    }

    /** Of files that could not be read, written, moved or listed. */
    static StoreException of(Path file, IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return new StoreException.ReadOnly(file, failure);
        }
        if (failure instanceof NoSuchFileException) {
            return StoreException.Missing.file(file);
        }
        String said = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        String reason = said == null ? "" : said;
        boolean full =
                reason.contains("No space left") || reason.contains("quota") || reason.contains("not enough space");
        return full
                ? new StoreException.Full(file, failure)
                : new StoreException.Failed(file, reason.isEmpty() ? WORDS.say("failed.disk") : reason, failure);
    }

    /** Of a call that answers with a result code in place of an exception. */
    static StoreException of(Path file, int code, String words) {
        return of(file, code, words, null);
    }

    private static StoreException of(Path file, int code, String words, Throwable failure) {
        return switch (SQLiteErrorCode.getErrorCode(code & PRIMARY)) {
            case SQLITE_BUSY, SQLITE_LOCKED -> new StoreException.Locked(file, failure);
            case SQLITE_CORRUPT, SQLITE_NOTADB, SQLITE_FORMAT ->
                new StoreException.Damaged(file, WORDS.say("damaged.pages"), failure);
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN -> new StoreException.ReadOnly(file, failure);
            case SQLITE_FULL -> new StoreException.Full(file, failure);
            case SQLITE_IOERR -> new StoreException.Failed(file, WORDS.say("failed.disk"), failure);
            case SQLITE_CONSTRAINT -> new StoreException.Constraint(file, words, failure);
            default -> new StoreException.Failed(file, words, failure);
        };
    }
}
