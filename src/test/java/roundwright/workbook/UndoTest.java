package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.StoreException;

/** Undo and redo over long runs of random edits; {@code -Dedits=N -Dseed=N} for longer ones. */
class UndoTest {
    private static final long SEED = Long.getLong("seed", 11);
    private static final int EDITS = Integer.getInteger("edits", 600);

    @TempDir
    Path folder;

    @Test
    void undoingAllGivesTheBeginningAndRedoingAllTheEnd() throws StoreException {
        try (Workbook workbook = workbook("long.db")) {
            RandomSteps steps = new RandomSteps(workbook, SEED, false);
            for (int edit = 0; edit < EDITS; edit++) {
                steps.take();
            }
            List<String> end = withoutSettings(Content.thatCounts(workbook.view()));
            while (workbook.undoName().isPresent()) {
                workbook.undo();
            }
            assertEquals(List.of(), withoutSettings(Content.of(workbook.view())), "seed " + SEED);
            assertEquals(List.of(), onDisk(workbook, "beginning.db"), "seed " + SEED);
            while (workbook.redoName().isPresent()) {
                workbook.redo();
            }
            assertEquals(end, withoutSettings(Content.thatCounts(workbook.view())), "seed " + SEED);
            assertEquals(end, onDisk(workbook, "end.db"), "seed " + SEED);
        }
    }

    @Test
    void everyStepOfUndoGoesToWhereItCameFromAndTheFileSaysTheSame() throws StoreException {
        Path file = folder.resolve("steps.db");
        List<String> last;
        try (Workbook workbook = workbook("steps.db")) {
            RandomSteps steps = new RandomSteps(workbook, SEED + 1, true);
            for (int edit = 0; edit < EDITS / 3; edit++) {
                List<String> before = withoutSettings(Content.thatCounts(workbook.view()));
                int undoable = workbook.undoSteps();
                steps.take();
                if (workbook.undoSteps() > undoable) {
                    List<String> after = withoutSettings(Content.thatCounts(workbook.view()));
                    workbook.undo();
                    assertEquals(before, withoutSettings(Content.thatCounts(workbook.view())), "seed " + SEED);
                    workbook.redo();
                    assertEquals(after, withoutSettings(Content.thatCounts(workbook.view())), "seed " + SEED);
                }
            }
            last = Content.of(workbook.view());
        }
        try (Workbook again = Workbook.open(file, folder, Clock.systemUTC())) {
            assertEquals(last, Content.of(again.view()));
        }
    }

    /** What the file itself holds, read from a copy of it. */
    private List<String> onDisk(Workbook workbook, String name) throws StoreException {
        Path copy = folder.resolve(name);
        workbook.copyTo(copy);
        try (Workbook read = Workbook.open(copy, folder, Clock.systemUTC())) {
            return withoutSettings(Content.thatCounts(read.view()));
        }
    }

    private Workbook workbook(String name) throws StoreException {
        return Workbook.create(folder.resolve(name), folder, Clock.fixed(Sketch.NOW, ZoneOffset.UTC));
    }

    private static List<String> withoutSettings(List<String> lines) {
        List<String> kept = new ArrayList<>(lines);
        kept.removeIf(line -> line.startsWith("Setting["));
        return kept;
    }
}
