package roundwright.desktop.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColumnWidthsTest {
    private static ColumnWidths.Wish wish(int least, int wanted, double share) {
        return new ColumnWidths.Wish(least, wanted, share);
    }

    @Test
    void theColumnThatWantsLittleMoreIsMadeWholeFirst() {
        assertArrayEquals(new int[] {60, 140}, ColumnWidths.of(List.of(wish(50, 60, 1), wish(100, 300, 1)), 200));
    }

    @Test
    void whatIsOverIsSharedOut() {
        assertArrayEquals(new int[] {80, 220}, ColumnWidths.of(List.of(wish(50, 60, 0.25), wish(100, 160, 0.75)), 300));
    }

    @Test
    void thereIsNeverLessThanTheLeast() {
        assertArrayEquals(new int[] {50, 100}, ColumnWidths.of(List.of(wish(50, 60, 1), wish(100, 300, 1)), 20));
    }

    @Test
    void noWidthIsLostAndNoColumnIsCutForAnotherThatHasMoreThanItWants() {
        Random random = new Random(7);
        for (int run = 0; run < 2_000; run++) {
            List<ColumnWidths.Wish> wishes = IntStream.range(0, 1 + random.nextInt(6))
                    .mapToObj(column -> wish(20 + random.nextInt(80), random.nextInt(300), 0.1 + random.nextDouble()))
                    .toList();
            int least = wishes.stream().mapToInt(ColumnWidths.Wish::least).sum();
            int width = least + random.nextInt(900);
            int[] widths = ColumnWidths.of(wishes, width);
            int sum = IntStream.of(widths).sum();
            assertTrue(sum <= width && sum >= width - widths.length, sum + " of " + width);
            long cut = IntStream.range(0, widths.length)
                    .filter(column -> widths[column] < wishes.get(column).wanted())
                    .count();
            int wanted = wishes.stream()
                    .mapToInt(wish -> Math.max(wish.least(), wish.wanted()))
                    .sum();
            assertEquals(width >= wanted, cut == 0, wishes + " in " + width);
        }
    }
}
