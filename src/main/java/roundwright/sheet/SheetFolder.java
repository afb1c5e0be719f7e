package roundwright.sheet;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import roundwright.wording.Wording;

/**
 * Writes sheets into a folder, all of them or none: they are made in a hidden folder beside the others, and moved to their names only when the last is on the
 * disk. Sheets of the same name are replaced; nothing else in the folder is touched.
 */
public final class SheetFolder {
    private static final Wording WORDS = Wording.of("sheet");

    private final Path folder;

    public SheetFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * Makes and writes them, on as many threads as the machine has processors.
     *
     * @return the files, in the order of the sheets; empty where the listener stopped it
     */
    public List<Path> write(List<Sheet> sheets, SheetProgress progress) throws CannotWrite {
        List<Path> made = new ArrayList<>();
        try {
            missingFolders(folder).forEach(made::add);
            Files.createDirectories(folder);
            List<Path> written = makeAndMove(sheets, progress);
            if (written.isEmpty()) {
                made.forEach(SheetFolder::deleteIfEmpty);
            }
            return written;
        } catch (IOException failure) {
            made.forEach(SheetFolder::deleteIfEmpty);
            throw new CannotWrite(reason(failure), failure);
        }
    }

    private List<Path> makeAndMove(List<Sheet> sheets, SheetProgress progress) throws IOException {
        try (HiddenFolder beside = new HiddenFolder(folder)) {
            return makeAll(sheets, beside, progress) ? moveAll(sheets, beside) : List.of();
        }
    }

    /** Folders that are not there yet, the innermost first. */
    private static List<Path> missingFolders(Path folder) {
        List<Path> missing = new ArrayList<>();
        for (Path path = folder; path != null && !Files.exists(path); path = path.getParent()) {
            missing.add(path);
        }
        return missing;
    }

    private static boolean makeAll(List<Sheet> sheets, HiddenFolder beside, SheetProgress progress) throws IOException {
        ExecutorService workers =
                Executors.newFixedThreadPool(Math.max(1, Runtime.getRuntime().availableProcessors()));
        try {
            ExecutorCompletionService<Sheet> making = new ExecutorCompletionService<>(workers);
            List<Future<Sheet>> asked = new ArrayList<>();
            sheets.forEach(sheet -> asked.add(making.submit(() -> make(sheet, beside))));
            for (int done = 1; done <= sheets.size(); done++) {
                Sheet last = making.take().get();
                if (!progress.done(done, sheets.size(), last)) {
                    return false;
                }
            }
            return true;
        } catch (ExecutionException failure) {
            throw unwrapped(failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        } finally {
            workers.shutdownNow();
            awaitEnd(workers);
        }
    }

    /** No worker writes into a folder that is being deleted. */
    private static void awaitEnd(ExecutorService workers) {
        try {
            workers.awaitTermination(1, java.util.concurrent.TimeUnit.MINUTES);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static IOException unwrapped(ExecutionException failure) {
        if (failure.getCause() instanceof IOException cause) {
            return cause;
        }
        throw new IllegalStateException("a sheet could not be made", failure.getCause());
    }

    private static Sheet make(Sheet sheet, HiddenFolder beside) throws IOException {
        byte[] bytes = sheet.bytes().get();
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException();
        }
        Files.write(beside.file(sheet.file()), bytes, StandardOpenOption.CREATE_NEW);
        return sheet;
    }

    /** First all to the disk, then all to their names. A name that is taken by a folder is found before the first is moved. */
    private List<Path> moveAll(List<Sheet> sheets, HiddenFolder beside) throws IOException {
        for (Sheet sheet : sheets) {
            try (FileChannel channel = FileChannel.open(beside.file(sheet.file()), StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Path target = folder.resolve(sheet.file());
            if (Files.isDirectory(target) || (Files.exists(target) && !Files.isWritable(target))) {
                throw new AccessDeniedException(target.toString());
            }
        }
        List<Path> written = new ArrayList<>();
        for (Sheet sheet : sheets) {
            Path target = folder.resolve(sheet.file());
            move(beside.file(sheet.file()), target);
            written.add(target);
        }
        return written;
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void deleteIfEmpty(Path made) {
        try {
            Files.deleteIfExists(made);
        } catch (IOException notEmpty) {
            // somebody else put something there
        }
    }

    private boolean fileInTheWay() {
        Path path = folder;
        while (path != null && !Files.exists(path)) {
            path = path.getParent();
        }
        return path != null && !Files.isDirectory(path);
    }

    private String reason(IOException failure) {
        if (failure instanceof AccessDeniedException || failure instanceof NoSuchFileException) {
            return WORDS.say("may-not-write", ((FileSystemException) failure).getFile());
        }
        if (fileInTheWay()) {
            return WORDS.say("not-a-folder", folder);
        }
        String said = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return WORDS.say(
                "cannot-write", folder, said == null ? failure.getClass().getSimpleName() : said);
    }
}
