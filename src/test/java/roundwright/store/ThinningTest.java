package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThinningTest {
    private static final long SEED = Long.getLong("seed", 17);
    private static final Instant START = Instant.parse("2026-01-05T08:00:00Z");

    @Test
    void aYearOfDailyCopiesComesDownToDaysWeeksAndMonths() {
        List<Instant> daily = IntStream.range(0, 400)
                .mapToObj(day -> START.plus(Duration.ofDays(day)))
                .toList();
        Set<Instant> kept = Thinning.kept(daily);
        List<LocalDate> days = days(kept);
        LocalDate last = day(daily.get(399));
        for (int back = 0; back < 7; back++) {
            assertTrue(days.contains(last.minusDays(back)), "day -" + back);
        }
        assertEquals(12, days.stream().map(YearMonth::from).distinct().count());
        assertTrue(kept.size() <= 7 + 8 + 12, kept.size() + " kept");
        // 2027-02-08 is a Monday: the weeks before end on Sundays, the months on their last days
        assertEquals(LocalDate.of(2027, 2, 8), last);
        assertTrue(days.contains(LocalDate.of(2027, 1, 31)));
        assertTrue(days.contains(LocalDate.of(2026, 12, 27)));
        assertTrue(days.contains(LocalDate.of(2026, 3, 31)));
        assertTrue(!days.contains(LocalDate.of(2026, 2, 28)), "the thirteenth month back");
    }

    @Test
    void aLongBreakCostsNothing() {
        List<Instant> before = IntStream.range(0, 10)
                .mapToObj(day -> START.plus(Duration.ofDays(day)))
                .toList();
        List<Instant> after = new ArrayList<>(before);
        after.add(START.plus(Duration.ofDays(500)));
        Set<Instant> kept = new HashSet<>(Thinning.kept(after));
        assertTrue(kept.containsAll(before.subList(5, 10)), "the days before the break stay");
    }

    @Test
    void nothingAndOneAreKeptAsTheyAre() {
        assertEquals(Set.of(), Thinning.kept(List.of()));
        assertEquals(Set.of(START), Thinning.kept(List.of(START, START)));
    }

    /** Whatever the moments: what is kept is kept again, the newest is kept, and the order they are given in does not matter. */
    @Test
    void keepingTwiceIsKeepingOnceInAnyOrder() {
        Random chance = new Random(SEED);
        for (int run = 0; run < 500; run++) {
            List<Instant> moments = moments(chance);
            Set<Instant> kept = Thinning.kept(moments);
            String told = "seed " + SEED + ", run " + run + ": " + moments;
            assertEquals(kept, Thinning.kept(kept), told);
            assertTrue(kept.contains(Collections.max(moments)), told);
            assertTrue(new HashSet<>(moments).containsAll(kept), told);
            assertTrue(kept.size() <= 26 + onNewestDay(moments), told);
            Collections.shuffle(moments, chance);
            assertEquals(kept, Thinning.kept(moments), told);
        }
    }

    /** Thinning after each new copy, as the program does, ends where thinning all of them at once would. */
    @Test
    void thinningAsTimeGoesOnLosesNothingThatWouldBeKeptAtTheEnd() {
        Random chance = new Random(SEED + 1);
        for (int run = 0; run < 200; run++) {
            Set<Instant> there = new HashSet<>();
            List<Instant> all = List.copyOf(new TreeSet<>(moments(chance)));
            for (Instant moment : all) {
                there.add(moment);
                there = new HashSet<>(Thinning.kept(there));
            }
            assertEquals(Thinning.kept(all), there, "seed " + (SEED + 1) + ", run " + run + ": " + all);
        }
    }

    private static List<Instant> moments(Random chance) {
        List<Instant> moments = new ArrayList<>();
        int span = 1 + chance.nextInt(chance.nextBoolean() ? 20_000 : 300);
        for (int index = 0; index <= chance.nextInt(200); index++) {
            moments.add(START.plus(chance.nextInt(span), ChronoUnit.HOURS));
        }
        return moments;
    }

    private static long onNewestDay(List<Instant> moments) {
        LocalDate newest = day(Collections.max(moments));
        return moments.stream()
                .distinct()
                .filter(moment -> day(moment).equals(newest))
                .count();
    }

    private static List<LocalDate> days(Set<Instant> moments) {
        return moments.stream().map(ThinningTest::day).toList();
    }

    private static LocalDate day(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC).toLocalDate();
    }
}
