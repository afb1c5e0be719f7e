package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.StoreException;

class TypingTest {
    private static final int REPORTS = 20_000;
    private static final double FEW_MILLISECONDS = 25;

    @TempDir
    Path folder;

    @Test
    void aCountIsOnTheDiskInAFewMillisecondsEvenInALongHistory() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram", "Zoë")) {
            Random chance = new Random(1);
            sketch.workbook.apply(new CountEdit.ReportCounts(
                    sketch.group,
                    IntStream.range(0, REPORTS)
                            .mapToObj(index -> NewCount.of(
                                    sketch.students.get(chance.nextInt(3)), "Acorn", 1 + chance.nextInt(60), 30))
                            .toList()));
            List<Double> times = new ArrayList<>();
            for (int round = 1; round <= 100; round++) {
                long begun = System.nanoTime();
                sketch.count(0, round, 6);
                times.add((System.nanoTime() - begun) / 1e6);
            }
            times.sort(null);
            System.out.printf("a count takes %.1f ms (median), %.1f ms (p95)%n", times.get(50), times.get(95));
            assertTrue(times.get(50) < FEW_MILLISECONDS, times.toString());
        }
    }
}
