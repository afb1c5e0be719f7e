package roundwright.command;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.UUID;
import roundwright.wording.Wording;

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
            Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
            if (Files.exists(real) && !Files.isWritable(real)) {
                throw new AccessDeniedException(target.toString());
            }
            writeBeside(real, text);
        } catch (AccessDeniedException denied) {
            throw new CommandException.Machine(WORDS.say("may-not-write", target));
        } catch (NoSuchFileException missing) {
            throw new CommandException.Machine(WORDS.say("no-such-folder", target));
        } catch (IOException failure) {
            String reason = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
            throw new CommandException.Machine(WORDS.say("cannot-write", target, reason));
        }
    }

    private static void writeBeside(Path target, String text) throws IOException {
        Path beside = Files.createFile(target.resolveSibling("." + UUID.randomUUID() + ".new"));
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                var bytes = StandardCharsets.UTF_8.encode(text);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            keepPermissions(target, beside);
            replace(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void keepPermissions(Path target, Path beside) throws IOException {
        try {
            if (Files.exists(target)) {
                Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(target));
            }
        } catch (UnsupportedOperationException notPosix) {
            // permissions are inherited from the folder there
        }
    }

    private static void replace(Path beside, Path target) throws IOException {
        try {
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
