package roundwright.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.Supplier;

/** What comes packed with the program and is needed as a file: unpacked once into a folder of what can be made anew at any time. */
public final class Unpacked {
    private Unpacked() {}

    /**
     * The file, unpacked where it is not there yet: a whole one or none, so that a start that is cut off leaves nothing that the next one
     * would take for it.
     *
     * @param packed what it is made of, asked for only then; null where there is no such thing
     */
    public static Path file(Path file, Supplier<InputStream> packed) throws IOException {
        if (Files.exists(file)) {
            return file;
        }
        try (InputStream bytes = packed.get()) {
            if (bytes == null) {
                throw new FileNotFoundException(file.toString());
            }
            Files.createDirectories(file.getParent());
            Path unfinished = Files.createTempFile(file.getParent(), "unpacking", ".tmp");
            try {
                Files.copy(bytes, unfinished, StandardCopyOption.REPLACE_EXISTING);
                return Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(unfinished);
            }
        }
    }
}
