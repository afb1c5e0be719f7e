package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.FinishRange;
import roundwright.course.planning.Learner;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.story.Beginner;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.WrittenRound;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Round;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/** Forecasts for students who work, go wrong and pull back as the story says. */
class ForecastTest {
    private static final int STUDENTS = 400;
    private static final double GROUP_PACE = 6;
    private static final int HELD = 3;
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 5);
    private static final Pattern PATTERN = PatternReader.readBare(Optional.of(Terms.UK), """
            # Cup
            Rnd 1: 6 dc in magic ring. (6)
            Rnd 2: inc x 6 (12)
            Rnd 3: (dc, inc) x 6 (18)
            Rnd 4: (2 dc, inc) x 6 (24)
            Rnd 5: (3 dc, inc) x 6 (30)
            Rnd 6: (4 dc, inc) x 6 (36)
            Rnds 7-24: dc in each st around. (36)
            Rnd 25: (4 dc, dec) x 6 (30)
            Rnds 26-34: dc in each st around. (30)
            Rnd 35: (3 dc, dec) x 6 (24)
            Rnds 36-40: dc in each st around. (24)
            """);
    private static final List<Round> ROUNDS = PATTERN.parts().get(0).rounds();
    private static final Plan PLAN = plan();

    private static Plan plan() {
        PlanItems items = PlanItems.of(FirstUses.of(PATTERN, Techniques.catalogue()), GROUP_PACE);
        try {
            return Planner.plan(
                    PlanRequest.of(items.items(), new PlanSettings(75, GROUP_PACE, 2, 0), OptionalInt.empty()));
        } catch (CannotPlan impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Works through the course session by session, never beyond the lesson. */
    private static final class Student {
        private final Random random;
        private final Beginner hands;
        private final double ownPace;
        private final List<CountReport> reports = new ArrayList<>();
        private int next;
        private int finishedIn = -1;
        private double minutesSinceAsked;
        private double minutesLeft;
        private double stitchesLeft;

        Student(long seed) {
            random = new Random(seed);
            hands = new Beginner(Rates.STORY, random);
            ownPace = GROUP_PACE * Math.exp(0.35 * random.nextGaussian());
        }

        void sessions(int from, int to) {
            for (int session = from; session < to && finishedIn < 0; session++) {
                session(session);
            }
        }

        private void session(int number) {
            boolean lesson = number < PLAN.lessons().size();
            double teaching = lesson ? PLAN.lessons().get(number).minutes().teaching() : 0;
            double length = 75 - (number == 0 ? 15 : 25) - teaching;
            double pace = ownPace * Math.exp(0.25 * random.nextGaussian());
            int reach = lesson ? PLAN.lessons().get(number).stretch().last() : ROUNDS.size() - 1;
            double clock = 0;
            while (next <= reach && clock < length) {
                if (stitchesLeft == 0 && minutesLeft == 0) {
                    begin();
                }
                double needed = minutesLeft + stitchesLeft / pace;
                if (clock + needed > length) {
                    stopAfter(length - clock, pace);
                    clock = length;
                } else {
                    clock += needed;
                    minutesLeft = 0;
                    stitchesLeft = 0;
                    report(number, clock);
                    next++;
                }
            }
            finishedIn = next == ROUNDS.size() ? number : -1;
            minutesSinceAsked += number < HELD ? 0 : finishedIn < 0 ? length : clock;
        }

        private void stopAfter(double minutes, double pace) {
            double spent = Math.min(minutes, minutesLeft);
            minutesLeft -= spent;
            stitchesLeft -= (minutes - spent) * pace;
        }

        /** Draws how often the round has to be worked until its count is right. */
        private void begin() {
            int count = ROUNDS.get(next).count().getAsInt();
            minutesLeft = 0.75;
            stitchesLeft = count;
            while (made() != count) {
                minutesLeft += 1 + 0.75;
                stitchesLeft += count;
            }
        }

        private int made() {
            Round round = ROUNDS.get(next);
            if (next == 0) {
                return hands.start(round.count().getAsInt()).made();
            }
            WrittenRound own = WrittenRound.of(round.steps().get());
            List<WrittenRound> around = IntStream.of(next - 1, next + 1)
                    .filter(place -> place > 0 && place < ROUNDS.size())
                    .mapToObj(place -> WrittenRound.of(ROUNDS.get(place).steps().get()))
                    .toList();
            return hands.work(own, around, own.takes()).made();
        }

        private void report(int session, double clock) {
            Instant at = Instant.parse("2027-01-05T19:00:00Z")
                    .plus(7L * session, ChronoUnit.DAYS)
                    .plusSeconds((long) (clock * 60));
            reports.add(new CountReport(
                    reports.size() + 1,
                    new StudentId(1),
                    "Cup",
                    ROUNDS.get(next).number(),
                    CountReport.Kind.COUNTED,
                    ROUNDS.get(next).count(),
                    at,
                    ""));
        }
    }

    private static final List<LocalDate> AHEAD =
            IntStream.range(HELD, 40).mapToObj(week -> FIRST.plusWeeks(week)).toList();

    @Test
    void eightyOfAHundredFinishInTheirRange() {
        Forecast forecast = new Forecast(PATTERN, PLAN, GROUP_PACE);
        PatternStory story = new PatternStory(PATTERN, Rates.STORY);
        int early = 0;
        int late = 0;
        int asked = 0;
        int insideByMinutes = 0;
        double weeks = 0;
        for (int i = 0; i < STUDENTS; i++) {
            Student student = new Student(900 + i);
            student.sessions(0, HELD);
            FinishRange range = forecast.of(student.reports, story, HELD, AHEAD).orElseThrow();
            student.sessions(HELD, 40);
            LocalDate finished = FIRST.plusWeeks(student.finishedIn);
            asked++;
            boolean inside = range.leastMinutes() <= student.minutesSinceAsked
                    && student.minutesSinceAsked <= range.mostMinutes();
            insideByMinutes += inside ? 1 : 0;
            early += finished.isBefore(range.earliest().orElseThrow()) ? 1 : 0;
            late += finished.isAfter(range.latest().orElseThrow()) ? 1 : 0;
            weeks += ChronoUnit.WEEKS.between(
                    range.earliest().get(), range.latest().get());
        }
        assertEquals(0.8, (double) insideByMinutes / asked, 3 * Math.sqrt(0.8 * 0.2 / asked));
        // dates are whole sessions, so a range may hold more than eighty; it may not hold fewer
        double error = 3 * Math.sqrt(0.1 * 0.9 / asked);
        assertTrue(early <= (0.1 + error) * asked, early + " of " + asked + " finished before their range");
        assertTrue(late <= (0.1 + error) * asked, late + " of " + asked + " finished after their range");
        assertTrue(early + late >= 0.02 * asked, "ranges that hold everyone say nothing");
        assertTrue(weeks / asked < 4, "the ranges are " + weeks / asked + " weeks wide");
    }

    @Test
    void aStudentIsSeenByPlaceAndPace() {
        Student student = new Student(4);
        student.sessions(0, HELD);
        Learner learner = new Forecast(PATTERN, PLAN, GROUP_PACE).learner("Ottoline", student.reports);
        assertEquals(student.next, learner.done());
        assertEquals(student.ownPace, learner.pace(), 0.5 * student.ownPace);
        Learner unknown = new Forecast(PATTERN, PLAN, GROUP_PACE).learner("Piet", List.of());
        assertEquals(0, unknown.done());
        assertEquals(GROUP_PACE, unknown.pace(), 1e-9);
    }

    @Test
    void aFinishedPieceHasNoForecast() {
        Student student = new Student(5);
        student.sessions(0, 200);
        PatternStory story = new PatternStory(PATTERN, Rates.STORY);
        assertEquals(Optional.empty(), new Forecast(PATTERN, PLAN, GROUP_PACE).of(student.reports, story, HELD, AHEAD));
    }

    @Test
    void mistakesMakeItLater() {
        Forecast forecast = new Forecast(PATTERN, PLAN, GROUP_PACE);
        Student student = new Student(6);
        student.sessions(0, HELD);
        Rates careless = Rates.STORY.with(roundwright.mistakes.story.Kind.SKIPPED, 0.02);
        double usual = forecast.of(student.reports, new PatternStory(PATTERN, Rates.STORY), HELD, AHEAD)
                .orElseThrow()
                .mostMinutes();
        double more = forecast.of(student.reports, new PatternStory(PATTERN, careless), HELD, AHEAD)
                .orElseThrow()
                .mostMinutes();
        assertTrue(more > usual + 10, usual + " and " + more);
    }
}
