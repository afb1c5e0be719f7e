package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Forecasts hold: of a hundred invented students about eighty finish inside their range. */
class FinishForecastTest {
    private static final int STUDENTS = 1000;
    private static final double GROUP_PACE = 6;
    private static final Setback SETBACK = new Setback(0.15, 12);

    /** Three standard errors of a share of 0.8 among so many. */
    private static final double SAMPLING = 3 * Math.sqrt(0.8 * 0.2 / STUDENTS);

    private static final List<PlanItem> ROUNDS = IntStream.rangeClosed(1, 30)
            .mapToObj(number -> new PlanItem(
                    "Tower",
                    OptionalInt.of(number),
                    Optional.empty(),
                    20 + number,
                    (20 + number) / GROUP_PACE,
                    0.75,
                    0,
                    List.of(),
                    false,
                    number,
                    number == 30,
                    false,
                    true))
            .toList();

    private static List<SessionAhead> sessions(int number, double minutes) {
        return IntStream.range(0, number)
                .mapToObj(
                        week -> new SessionAhead(LocalDate.of(2027, 1, 5).plusWeeks(week), minutes, Integer.MAX_VALUE))
                .toList();
    }

    private static FinishRange forecast(List<SessionAhead> sessions, PaceBelief pace) {
        return FinishForecast.of(ROUNDS, GROUP_PACE, Collections.nCopies(ROUNDS.size(), SETBACK), sessions, pace);
    }

    /** A student of a world in which the mean and the spread of paces vary as the belief supposes. */
    private record Person(double logMean, double spread, Random random) {
        static Person asSupposed(Random random) {
            double chiSquared = IntStream.range(0, 4)
                    .mapToDouble(i -> random.nextGaussian())
                    .map(x -> x * x)
                    .sum();
            double spread = Math.sqrt(4 * 0.0625 / chiSquared);
            double logMean = Math.log(GROUP_PACE) + random.nextGaussian() * spread / Math.sqrt(0.4);
            return new Person(logMean, spread, random);
        }

        /** A student of a plainer world: all are equally steady. */
        static Person steady(Random random) {
            return new Person(Math.log(GROUP_PACE) + 0.4 * random.nextGaussian(), 0.25, random);
        }

        double pace() {
            return Math.exp(logMean + spread * random.nextGaussian());
        }

        double[] seen(int sessions) {
            return IntStream.range(0, sessions).mapToDouble(i -> pace()).toArray();
        }

        /** Works all rounds in sessions of so many minutes, a hundredth of a minute at a time. */
        double minutesToFinish(double sessionMinutes) {
            double pace = pace();
            double clock = 0;
            double untilNext = sessionMinutes;
            for (PlanItem round : ROUNDS) {
                double lost = random.nextDouble() < SETBACK.probability()
                        ? -SETBACK.minutes() * Math.log(random.nextDouble())
                        : 0;
                double rest = lost + round.counting();
                double stitches = round.stitches();
                while (rest > 0 || stitches > 0) {
                    double tick = 0.01;
                    rest -= tick;
                    stitches -= rest < 0 ? tick * pace : 0;
                    clock += tick;
                    untilNext -= tick;
                    if (untilNext <= 0) {
                        untilNext = sessionMinutes;
                        pace = pace();
                    }
                }
            }
            return clock;
        }
    }

    private static double shareInRange(java.util.function.Function<Random, Person> people, int seen) {
        int inside = 0;
        for (int i = 0; i < STUDENTS; i++) {
            Person person = people.apply(new Random(7_000 + i));
            FinishRange range = forecast(sessions(40, 60), PaceBelief.of(GROUP_PACE, person.seen(seen)));
            double minutes = person.minutesToFinish(60);
            inside += range.leastMinutes() <= minutes && minutes <= range.mostMinutes() ? 1 : 0;
        }
        return (double) inside / STUDENTS;
    }

    @Test
    void eightyOfAHundredFinishInsideTheirRange() {
        for (int seen : new int[] {0, 2, 6}) {
            double share = shareInRange(Person::asSupposed, seen);
            assertEquals(0.8, share, SAMPLING + 0.01, "after " + seen + " sessions");
        }
    }

    @Test
    void theRangeHoldsAboutAsManyWhereStudentsAreSteadier() {
        double share = shareInRange(Person::steady, 4);
        assertTrue(share > 0.76 && share < 0.9, "share " + share);
    }

    @Test
    void whatHasBeenSeenNarrowsTheRange() {
        FinishRange stranger = forecast(sessions(40, 60), PaceBelief.of(GROUP_PACE));
        FinishRange known = forecast(sessions(40, 60), PaceBelief.of(GROUP_PACE, 6, 5.8, 6.3, 6, 5.9));
        assertTrue(known.mostMinutes() - known.leastMinutes() < stranger.mostMinutes() - stranger.leastMinutes());
        assertTrue(!known.earliest().get().isBefore(stranger.earliest().get()));
    }

    @Test
    void datesAreThoseOfTheSessionsAndOpenAfterTheLast() {
        PaceBelief pace = PaceBelief.of(GROUP_PACE, 6, 6, 6, 6);
        FinishRange range = forecast(sessions(40, 60), pace);
        // about 230 minutes of work and 55 of setbacks, an hour a week
        assertTrue(range.middle().get().isAfter(LocalDate.of(2027, 1, 19)), range.toString());
        assertTrue(range.middle().get().isBefore(LocalDate.of(2027, 2, 9)), range.toString());
        assertTrue(range.inTime() > 0.99);
        FinishRange never = forecast(sessions(2, 60), pace);
        assertEquals(Optional.empty(), never.middle());
        assertTrue(never.inTime() < 0.01);
        assertTrue(never.mostMinutes() > 200);
    }

    @Test
    void noOneGoesBeyondWhatHasBeenTaught() {
        List<SessionAhead> sessions = List.of(
                new SessionAhead(LocalDate.of(2027, 1, 5), 2000, 10),
                new SessionAhead(LocalDate.of(2027, 1, 12), 2000, 29),
                new SessionAhead(LocalDate.of(2027, 1, 19), 2000, 30));
        FinishRange range = forecast(sessions, PaceBelief.of(GROUP_PACE));
        assertEquals(Optional.of(LocalDate.of(2027, 1, 19)), range.earliest());
        assertEquals(range.earliest(), range.latest());
    }
}
