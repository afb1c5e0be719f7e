package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * The file holds people's names: where the system knows owners, nobody else may read it, its copies, or the folders of the program.
 * Files come into being that way, so that there is no moment in which they could be read. (Other systems keep what lies in a
 * person's own folders from others by themselves.)
 */
public final class Permissions {
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");

    private Permissions() {}

    /** Makes a folder and those above it, where they are not there yet. */
    public static void makeFolder(Path folder) throws StoreException {
        try {
            Files.createDirectories(folder, attributes(folder, FOLDER));
        } catch (IOException failure) {
            throw Failures.of(folder, failure);
        }
    }

    static void makeFile(Path file) throws StoreException {
        try {
            Files.deleteIfExists(file);
            Files.createFile(file, attributes(file, FILE));
        } catch (java.nio.file.AccessDeniedException denied) {
            throw new StoreException.ReadOnly(file, denied);
        } catch (IOException failure) {
            throw Failures.of(file, failure);
        }
    }

    /** Closes a file that came from elsewhere to everybody but its owner, if we may. */
    static void forTheOwnerAlone(Path file) {
        try {
            if (posix(file) && !FILE.containsAll(Files.getPosixFilePermissions(file))) {
                Files.setPosixFilePermissions(file, FILE);
            }
        } catch (IOException notOurs) {
            // on a share or a stick that knows no owners
        }
    }

    private static FileAttribute<?>[] attributes(Path path, Set<PosixFilePermission> permissions) {
        return posix(path)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
                : new FileAttribute<?>[0];
    }

    private static boolean posix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
