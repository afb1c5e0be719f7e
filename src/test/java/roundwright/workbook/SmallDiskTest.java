package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import roundwright.store.StoreException;

/** A disk that really is full: {@code -Dsmall.disk=FOLDER}, a file system of a few hundred kilobytes. */
class SmallDiskTest {
    private static final String SMALL = System.getProperty("small.disk", "");

    @Test
    void whenTheDiskIsFullTheEditIsRefusedWholeAndAllBeforeItIsKept() throws Exception {
        assumeTrue(!SMALL.isEmpty(), "no small disk given");
        Path file = Path.of(SMALL, "full.db");
        int refusals = 0;
        List<String> last;
        try (Workbook workbook = EditingChild.create(file)) {
            RandomSteps steps = new RandomSteps(workbook, 5, true, true);
            for (int step = 0; step < 20_000 && refusals < 200; step++) {
                List<String> before = Content.of(workbook.view());
                try {
                    steps.take();
                } catch (StoreException.Full full) {
                    refusals++;
                    assertEquals(before, Content.of(workbook.view()));
                }
            }
            last = Content.of(workbook.view());
        }
        assertFalse(refusals == 0, "the disk was never full");
        try (Workbook again = EditingChild.open(file)) {
            assertEquals(last, Content.of(again.view()));
        }
        Files.delete(file);
    }
}
