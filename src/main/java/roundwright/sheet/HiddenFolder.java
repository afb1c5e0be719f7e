package roundwright.sheet;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import java.util.stream.Stream;

/** A folder for what is not whole yet. It is deleted when it is closed, and when the program is told to end before that. */
final class HiddenFolder implements AutoCloseable {
    private static final int TRIES = 20;

    private final Path path;
    private final Thread atEnd = new Thread(this::deleteQuietly, "delete unfinished sheets");

    HiddenFolder(Path parent) throws IOException {
        path = Files.createDirectory(parent.resolve("." + UUID.randomUUID() + ".new"));
        Runtime.getRuntime().addShutdownHook(atEnd);
    }

    Path file(String name) {
        return path.resolve(name);
    }

    @Override
    public void close() throws IOException {
        try {
            Runtime.getRuntime().removeShutdownHook(atEnd);
            delete();
        } catch (IllegalStateException ending) {
            // the hook deletes it
        }
    }

    private void delete() throws IOException {
        if (!Files.exists(path)) {
            return;
        }
        try (Stream<Path> files = Files.list(path)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
        }
        Files.deleteIfExists(path);
    }

    /** While the program ends other threads may still write. */
    private void deleteQuietly() {
        for (int i = 0; i < TRIES; i++) {
            try {
                delete();
                return;
            } catch (DirectoryNotEmptyException again) {
                Thread.onSpinWait();
            } catch (IOException given) {
                return;
            }
        }
    }
}
