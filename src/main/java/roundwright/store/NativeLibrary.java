package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLConnection;
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
        URL packed = SQLiteJDBCLoader.class.getResource(LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name);
        if (packed == null) {
            return;
        }
        Path folder = cache.resolve("sqlite-" + SQLiteJDBCLoader.getVersion()).toAbsolutePath();
        try {
            unpack(packed, folder.resolve(name));
            System.setProperty("org.sqlite.lib.path", folder.toString());
            System.setProperty("org.sqlite.lib.name", name);
        } catch (IOException cannot) {
            System.clearProperty("org.sqlite.lib.path");
        }
    }

    /** A whole copy or none: a start that is cut off leaves nothing that the next one would take for the library. */
    private static void unpack(URL packed, Path library) throws IOException {
        URLConnection connection = packed.openConnection();
        if (Files.exists(library) && Files.size(library) == connection.getContentLengthLong()) {
            return;
        }
        Files.createDirectories(library.getParent());
        Path unfinished = Files.createTempFile(library.getParent(), "unpacking", ".tmp");
        try (InputStream bytes = connection.getInputStream()) {
            Files.copy(bytes, unfinished, StandardCopyOption.REPLACE_EXISTING);
            Files.move(unfinished, library, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
