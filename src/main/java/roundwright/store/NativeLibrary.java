package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
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
            Unpacked.file(folder.resolve(name), () -> packed(name));
            System.setProperty("org.sqlite.lib.path", folder.toString());
            System.setProperty("org.sqlite.lib.name", name);
            // where the driver looks for copies that were left behind: nobody else's files are listed there
            System.setProperty("org.sqlite.tmpdir", folder.toString());
        } catch (IOException cannot) {
            System.clearProperty("org.sqlite.lib.path");
            System.clearProperty("org.sqlite.tmpdir");
        }
    }

    /** To say which system's library that is the driver starts another program. */
    private static InputStream packed(String name) {
        return SQLiteJDBCLoader.class.getResourceAsStream(LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name);
    }
}
