package roundwright.group;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PaceTest {
    private static final Instant EVENING = Instant.parse("2026-02-03T19:00:00Z");

    @Test
    void roundsReportedAsTheyAreDoneGiveThePace() {
        // 12, 18, 24 and 30 stitches, each 6 minutes after the one below
        assertEquals(84 / 24.0, Pace.of(reports(360, 6, 12, 18, 24, 30)).orElseThrow(), 1e-9);
    }

    @Test
    void countsEnteredTogetherSayNothing() {
        assertTrue(Pace.of(reports(5, 6, 12, 18, 24, 30)).isEmpty());
    }

    @Test
    void roundsAWeekApartSayNothing() {
        assertTrue(Pace.of(reports(7 * 24 * 3600, 6, 12, 18, 24, 30)).isEmpty());
    }

    private static List<CountReport> reports(long seconds, int... counts) {
        return IntStream.range(0, counts.length)
                .mapToObj(index -> new CountReport(
                        index + 1,
                        new StudentId(1),
                        "Tower",
                        index + 1,
                        CountReport.Kind.COUNTED,
                        OptionalInt.of(counts[index]),
                        EVENING.plusSeconds(index * seconds),
                        ""))
                .toList();
    }
}
