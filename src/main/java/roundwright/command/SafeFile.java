package roundwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import roundwright.wording.Wording;
import roundwright.workbook.WholeFile;

/**
 * Writes a whole file or nothing: the text goes to a file beside it, and takes its place only when it is on the disk.
 */
final class SafeFile {
    private static final Wording WORDS = Wording.of("command");

    private SafeFile() {}

    /** A path as a person wrote it. */
    static Path path(String name) throws CommandException {
        try {
            return Path.of(name);
        } catch (InvalidPathException impossible) {
            throw new CommandException.Machine(WORDS.say("no-such-file", name));
        }
    }

    /** Whether a file is this text in UTF-8. */
    static boolean holds(Path file, String text) throws CommandException {
        try {
            return Arrays.equals(Files.readAllBytes(file), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new CommandException.Machine(WORDS.say("no-such-file", file));
        }
    }

    /** Writes a text in UTF-8. */
    static void write(Path target, String text) throws CommandException {
        try {
            WholeFile.write(target, text);
        } catch (AccessDeniedException denied) {
            throw new CommandException.Machine(WORDS.say("may-not-write", target));
        } catch (NoSuchFileException missing) {
            throw new CommandException.Machine(WORDS.say("no-such-folder", target));
        } catch (IOException failure) {
            String reason = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
            throw new CommandException.Machine(WORDS.say("cannot-write", target, reason));
        }
    }
}
