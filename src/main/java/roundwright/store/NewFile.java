package roundwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Makes files under a passing name beside their own and moves them there when they are whole. */
final class NewFile {
    /** Writes the content of a file that is not there yet. */
    interface Content {
        void into(Path file) throws StoreException;
    }

    private NewFile() {}

    static void make(Path file) throws StoreException {
        make(file, passing -> Opening.make(passing, Migrations.KNOWN));
    }

    static void make(Path file, Content content) throws StoreException {
        Path passing = file.resolveSibling(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        try {
            content.into(passing);
            Permissions.forTheOwnerAlone(passing);
            // a move would replace what another program put there meanwhile; a link never does
            Files.createLink(file, passing);
        } catch (FileAlreadyExistsException failure) {
            throw StoreException.Failed.exists(file);
        } catch (UnsupportedOperationException | IOException noLinks) {
            move(passing, file);
        } finally {
            remove(passing);
        }
        keepName(file);
    }

    /** The name of the new file is on the disk, too, as far as the system can see to that. */
    private static void keepName(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notForFolders) {
            // some systems do this by themselves and do not let a program ask for it
        }
    }

    private static void move(Path passing, Path file) throws StoreException {
        try {
            Files.move(passing, file);
        } catch (FileAlreadyExistsException failure) {
            throw StoreException.Failed.exists(file);
        } catch (IOException failure) {
            throw new StoreException.Failed(file, failure.toString(), failure);
        }
    }

    private static void remove(Path passing) {
        try {
            Files.deleteIfExists(passing);
            Files.deleteIfExists(passing.resolveSibling(passing.getFileName() + "-journal"));
        } catch (IOException left) {
            // a file of no use stays behind; the one that was asked for is whole
        }
    }
}
