package roundwright.workbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a whole file or nothing: its content goes to a file beside it, and takes its place only when it is on the disk. */
public final class WholeFile {
    private WholeFile() {}

    /** Writes a text in UTF-8; where that fails, the file is as it was. */
    public static void write(Path target, String text) throws IOException {
        write(target, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes; where that fails, the file is as it was. */
    public static void write(Path target, byte[] content) throws IOException {
        Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        if (Files.exists(real) && !Files.isWritable(real)) {
            throw new AccessDeniedException(target.toString());
        }
        Path beside = Files.createFile(real.resolveSibling("." + UUID.randomUUID() + ".new"));
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            keepPermissions(real, beside);
            replace(beside, real);
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
