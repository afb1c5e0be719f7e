package roundwright.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import roundwright.store.StoreException;

/** A program that edits a file for ever and says each step as soon as it is acknowledged; made to be killed. */
public final class EditingChild {
    private EditingChild() {}

    /** Arguments: the file, the seed, and {@code backups} where backups are to be made and gone back to as well. */
    public static void main(String[] arguments) throws StoreException {
        Path file = Path.of(arguments[0]);
        Workbook workbook = Files.exists(file) ? open(file) : create(file);
        RandomSteps steps = steps(workbook, Long.parseLong(arguments[1]), arguments.length > 2);
        for (int step = 1; ; step++) {
            steps.take();
            System.out.println(step);
        }
    }

    static RandomSteps steps(Workbook workbook, long seed, boolean backupsToo) {
        return new RandomSteps(workbook, seed, true, backupsToo);
    }

    static Path backups(Path file) {
        return file.resolveSibling(file.getFileName() + "-backups");
    }

    static Workbook create(Path file) throws StoreException {
        return Workbook.create(file, backups(file), Clock.fixed(Sketch.NOW, ZoneOffset.UTC));
    }

    static Workbook open(Path file) throws StoreException {
        return Workbook.open(file, backups(file), Clock.fixed(Sketch.NOW, ZoneOffset.UTC));
    }
}
