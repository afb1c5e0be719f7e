package roundwright.desktop.start;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The archive of loaded classes with which the installed program starts sooner. It fits only the place and the jar it was made for, so
 * the program makes it itself, once, some seconds after its first start; without it, or with one that does not fit, everything works
 * the same. The installed program's start names the archive in {@code roundwright.start-archive}; a jar alone names none.
 *
 * @param archive where it is to be
 * @param maker the small program beside the installed one that writes a new archive under the name with {@code .new}
 */
record StartArchive(Path archive, Path maker) {
    private static final int SECONDS_AFTER_START = 10;
    private static final int LONGEST_MINUTES = 2;

    /** The archive of the program that is running, where that is an installed one. */
    static Optional<StartArchive> ofThisProgram() {
        Optional<Path> program = ProcessHandle.current().info().command().map(Path::of);
        return Optional.ofNullable(System.getProperty("roundwright.start-archive"))
                .map(Path::of)
                .flatMap(archive -> program.map(path -> new StartArchive(archive, beside(path))));
    }

    private static Path beside(Path program) {
        String name = program.getFileName().toString();
        String ending = name.endsWith(".exe") ? ".exe" : "";
        return program.resolveSibling(name.substring(0, name.length() - ending.length()) + "-prepare" + ending);
    }

    /** Sees to the archive a while after the start, when the processor has nothing better to do. */
    void makeLater() {
        Thread later = new Thread(
                () -> {
                    try {
                        TimeUnit.SECONDS.sleep(SECONDS_AFTER_START);
                        make();
                    } catch (InterruptedException interrupted) {
                        Thread.currentThread().interrupt();
                    } catch (IOException cannot) {
                        // the program starts as it did before
                    }
                },
                "roundwright-start-archive");
        later.setDaemon(true);
        later.start();
    }

    /** Makes the archive if it is missing or older than the program, and can be made here. */
    void make() throws IOException, InterruptedException {
        Path folder = archive.getParent();
        if (fits() || !Files.isWritable(folder) || !Files.isExecutable(maker)) {
            return;
        }
        try (FileChannel door = FileChannel.open(
                        folder.resolve("start.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = door.tryLock()) {
            if (lock != null && !fits()) {
                makeAlone();
            }
        } catch (OverlappingFileLockException another) {
            // it is being made
        }
    }

    private boolean fits() throws IOException {
        Path jar = archive.resolveSibling("roundwright.jar");
        return Files.exists(archive)
                && Files.exists(jar)
                && Files.getLastModifiedTime(archive).compareTo(Files.getLastModifiedTime(jar)) >= 0;
    }

    /** A whole archive or none: the virtual machine would fall over one that was cut off. */
    private void makeAlone() throws IOException, InterruptedException {
        Path unfinished = archive.resolveSibling(archive.getFileName() + ".new");
        Process made = new ProcessBuilder(maker.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        boolean whole = made.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES) && made.exitValue() == 0;
        if (!whole) {
            made.destroyForcibly().waitFor();
        }
        if (whole && Files.exists(unfinished)) {
            Files.move(unfinished, archive, StandardCopyOption.ATOMIC_MOVE);
        } else {
            Files.deleteIfExists(unfinished);
        }
    }
}
