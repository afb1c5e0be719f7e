package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The database's machine code, unpacked once into a folder of the program's own. Left to itself the driver unpacks it at every
 * start, which takes longer than opening the file, and leaves the copy behind when the program is killed.
 */
public final class NativeLibrary {
    private NativeLibrary() {}

    /**
     * Makes the driver load its library from under a folder; to be called before the first file is opened. Where the folder cannot
     * be written the driver unpacks the library as it always did.
     *
     * @param cache is made where it is not there yet
     */
    public static void keepIn(Path cache) {
        String name = LibraryLoaderUtil.getNativeLibName();
        Path folder = cache.resolve("sqlite-" + SQLiteJDBCLoader.getVersion() + "-" + System.getProperty("os.arch"))
                .toAbsolutePath();
        try {
            // the driver is asked for its own copy only where there is none yet: it starts another program to look for
            // it
            if (Files.exists(folder.resolve(name)) || unpacked(folder.resolve(name))) {
                System.setProperty("org.sqlite.lib.path", folder.toString());
                System.setProperty("org.sqlite.lib.name", name);
            }
        } catch (IOException cannot) {
            System.clearProperty("org.sqlite.lib.path");
        }
    }

    /** A whole copy or none: a start that is cut off leaves nothing that the next one would take for the library. */
    private static boolean unpacked(Path library) throws IOException {
        String packed = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + library.getFileName();
        try (InputStream bytes = SQLiteJDBCLoader.class.getResourceAsStream(packed)) {
            if (bytes == null) {
                return false;
            }
            Files.createDirectories(library.getParent());
            Path unfinished = Files.createTempFile(library.getParent(), "unpacking", ".tmp");
            try {
                Files.copy(bytes, unfinished, StandardCopyOption.REPLACE_EXISTING);
                Files.move(unfinished, library, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(unfinished);
            }
            return true;
        }
    }
}
