package roundwright.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes files under a passing name beside their own and moves them there when they are whole. */
final class NewFile {
    /** Writes the content of a file that is not there yet. */
    interface Content {
        void into(Path file) throws StoreException;
    }

    private NewFile() {}

    static void make(Path file) throws StoreException {
        make(file, Opening::make);
    }

    static void make(Path file, Content content) throws StoreException {
        Path passing = file.resolveSibling(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        try {
            content.into(passing);
            // a move would replace what another program put there meanwhile; a link never does
            Files.createLink(file, passing);
        } catch (FileAlreadyExistsException failure) {
            throw StoreException.Failed.exists(file);
        } catch (UnsupportedOperationException | IOException noLinks) {
            move(passing, file);
        } finally {
            remove(passing);
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
