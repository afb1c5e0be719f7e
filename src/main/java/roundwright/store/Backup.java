package roundwright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Copies of the whole file by the database's own backup call, which is right even while the file is open. */
final class Backup {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss").withZone(ZoneOffset.UTC);

    private Backup() {}

    static void write(Database database, Path target) throws StoreException {
        NewFile.make(target, database::backUpTo);
    }

    /** A name that says of which file, from which version and from when: {@code course.v1.2026-02-03T191205.db}. */
    static String name(Path file, int version, Instant when) {
        String name = file.getFileName().toString().replaceFirst("\\.db$", "");
        return name + ".v" + version + "." + STAMP.format(when) + ".db";
    }
}
