package roundwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes files under a passing name beside their own and moves them there when they are whole. */
final class NewFile {
    private static final String PASSING = ".new";
    private static final Pattern MADE_BY = Pattern.compile("\\.(\\d{1,18})\\.new$");

    /** Writes the content of a file that is not there yet. */
    interface Content {
        void into(Path file) throws StoreException;
    }

    private NewFile() {}

    static void make(Path file) throws StoreException {
        make(file, passing -> Opening.make(passing, Migrations.KNOWN));
    }

    static void make(Path file, Content content) throws StoreException {
        Path passing = passing(file);
        try {
            Permissions.makeFile(passing);
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
        keepName(file);
    }

    /** The name that a file has while it is made. */
    static Path passing(Path file) {
        return file.resolveSibling(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + PASSING);
    }

    /** Removes what a program that was killed has left of files it was making beside this one, or in their place. */
    static void sweep(Path file) {
        sweep(file.toAbsolutePath().getParent(), "." + file.getFileName() + ".");
    }

    /** The same for files whose names begin alike. */
    static void sweep(Path folder, String start) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                folder, path -> path.getFileName().toString().startsWith(start) && abandoned(path))) {
            left.forEach(NewFile::remove);
        } catch (IOException | DirectoryIteratorException notListed) {
            // what is left is of no use and does no harm
        }
    }

    private static boolean abandoned(Path path) {
        Matcher form = MADE_BY.matcher(path.getFileName().toString());
        return form.find() && ProcessHandle.of(Long.parseLong(form.group(1))).isEmpty();
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
            throw Failures.of(file, failure);
        }
    }

    static void remove(Path passing) {
        try {
            Files.deleteIfExists(passing);
            Files.deleteIfExists(passing.resolveSibling(passing.getFileName() + "-journal"));
        } catch (IOException left) {
            // a file of no use stays behind; the one that was asked for is whole
        }
    }
}
