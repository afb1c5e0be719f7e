package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Stream;

/**
 * Puts a damaged file out of the way without changing a byte of it, and another in its place: {@code courses.db} becomes
 * {@code courses.damaged-2026-02-03T191205.db} beside it, and what the database had noted for it goes along. Where the system can
 * give a file two names, there is no moment without a file in its place.
 */
public final class SetAside {
    private static final String MARK = ".damaged-";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss");

    /** Makes the file that comes in place of the damaged one. */
    public interface Replacement {
        void into(Path file) throws StoreException;
    }

    private SetAside() {}

    /** Makes the other file first; then sets the damaged one aside, and says where it is now. */
    public static Path replace(Path file, Instant now, Replacement replacement) throws StoreException {
        Path fresh = NewFile.passing(file.resolveSibling(file.getFileName() + ".mended"));
        NewFile.remove(fresh);
        try {
            replacement.into(fresh);
            Path aside = free(file, now);
            name(file, aside);
            if (Files.exists(journal(file))) {
                Files.move(journal(file), journal(aside));
            }
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return aside;
        } catch (IOException failure) {
            throw Failures.of(file, failure);
        } finally {
            NewFile.remove(fresh);
        }
    }

    /** The damaged files that were set aside for this one, and are still there. */
    static List<Path> of(Path file) throws StoreException {
        String start = base(file) + MARK;
        try (Stream<Path> paths = Files.list(file.toAbsolutePath().getParent())) {
            return paths.filter(path -> path.getFileName().toString().startsWith(start))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw Failures.of(file, failure);
        }
    }

    private static String base(Path file) {
        return file.getFileName().toString().replaceFirst("\\.db$", "");
    }

    private static void name(Path file, Path aside) throws IOException {
        try {
            Files.createLink(aside, file);
        } catch (UnsupportedOperationException | IOException noLinks) {
            Files.move(file, aside);
        }
    }

    private static Path free(Path file, Instant now) {
        Instant when = now;
        Path aside;
        do {
            aside = file.resolveSibling(base(file) + MARK + STAMP.format(when.atOffset(ZoneOffset.UTC)) + ".db");
            when = when.plusSeconds(1);
        } while (Files.exists(aside));
        return aside;
    }

    private static Path journal(Path file) {
        return file.resolveSibling(file.getFileName() + "-journal");
    }
}
