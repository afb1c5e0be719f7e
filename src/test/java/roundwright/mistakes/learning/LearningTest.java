package roundwright.mistakes.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.mistakes.Trial;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

class LearningTest {
    private static final Pattern BOWL = PatternReader.readBare(Optional.of(Terms.UK), """
            Rnd 1: 6 dc in magic ring (6)
            Rnd 2: inc x 6 (12)
            Rnd 3: (dc, inc) x 6 (18)
            Rnd 4: (2 dc, inc) x 6 (24)
            Rnd 5: (3 dc, inc) x 6 (30)
            Rnd 6: dc in each st around (30)
            Rnd 7: dc in each st around (30)
            Rnd 8: (3 dc, dec) x 6 (24)
            Rnd 9: (2 dc, dec) x 6 (18)
            Rnd 10: (dc, dec) x 6 (12)
            """);

    private static List<CountReport> worked(int students, Rates rates) {
        List<CountReport> reports = new ArrayList<>();
        for (int student = 0; student < students; student++) {
            add(reports, student, rates);
        }
        return reports;
    }

    private static void add(List<CountReport> reports, int student, Rates rates) {
        Trial trial = new Trial(BOWL, rates, new SplittableRandom(77L + student));
        for (int round = 1; round <= 10; round++) {
            RoundPlace place = new RoundPlace(BOWL.parts().get(0).name(), round);
            int count = trial.report(trial.work(place).orElseThrow().made());
            reports.add(new CountReport(
                    reports.size() + 1L,
                    new StudentId(student),
                    place.part(),
                    round,
                    CountReport.Kind.COUNTED,
                    OptionalInt.of(count),
                    java.time.Instant.EPOCH,
                    ""));
        }
    }

    @Test
    void aGroupThatMissesDecreasesIsKnownByItsCounts() {
        Rates careless = Rates.STORY.with(Kind.DECREASE_MISSED, 0.16);
        LearnedRates learned = Learning.of(BOWL, worked(60, careless)).group();
        assertEquals(0.16, learned.rates().rate(Kind.DECREASE_MISSED), 0.03);
        assertTrue(learned.beliefs().get(Kind.DECREASE_MISSED).quantile(0.05) > 0.1);
        assertEquals(0.03, learned.rates().rate(Kind.INCREASE_MISSED), 0.01);
        assertEquals(0.005, learned.rates().rate(Kind.WORKED_TWICE), 0.002);
        assertEquals(0.04, learned.rates().rate(Kind.MISCOUNTED), 0.02);
    }

    @Test
    void aGroupThatWorksByTheStoryTeachesNothingNew() {
        Rates learned = Learning.of(BOWL, worked(400, Rates.STORY)).group().rates();
        for (Kind kind : List.of(Kind.SKIPPED, Kind.WORKED_TWICE, Kind.INCREASE_MISSED, Kind.DECREASE_MISSED)) {
            assertEquals(1, learned.rate(kind) / Rates.STORY.rate(kind), 0.25, kind.word());
        }
    }

    @Test
    void oneStudentsHabitIsLearnedAndTheOthersKeepTheGroups() {
        List<CountReport> reports = worked(15, Rates.STORY);
        add(reports, 15, Rates.STORY.with(Kind.INCREASE_MISSED, 0.35));
        Learning learning = Learning.of(BOWL, reports);
        double group = learning.group().rates().rate(Kind.INCREASE_MISSED);
        double careless = learning.student(new StudentId(15)).rates().rate(Kind.INCREASE_MISSED);
        assertTrue(careless > 3 * group, careless + " against " + group);
        double other = learning.student(new StudentId(3)).rates().rate(Kind.INCREASE_MISSED);
        assertTrue(other < 2 * group, other + " against " + group);
    }

    @Test
    void whoReportedNothingIsTakenToBeLikeTheGroup() {
        Learning learning = Learning.of(BOWL, worked(5, Rates.STORY));
        Rates stranger = learning.student(new StudentId(99)).rates();
        for (Kind kind : Kind.values()) {
            assertEquals(learning.group().rates().rate(kind), stranger.rate(kind), 1e-12);
        }
    }

    /** Quantiles by an independent evaluation of the incomplete beta function: sums of binomials for whole numbers. */
    @ParameterizedTest
    @CsvSource({"2, 5, 0.05", "1, 1, 0.3", "8, 200, 0.95", "0.8, 19.2, 0.5", "30, 3, 0.05"})
    void quantilesAreThoseOfTheBetaDistribution(double happened, double went, double probability) {
        BetaBelief belief = new BetaBelief(happened, went);
        double quantile = belief.quantile(probability);
        int steps = 2_000_000;
        double below = 0;
        double all = 0;
        for (int step = 0; step < steps; step++) {
            double share = (step + 0.5) / steps;
            double rate = share * share * share;
            double weight = 3 * share * share * Math.pow(rate, happened - 1) * Math.pow(1 - rate, went - 1);
            all += weight;
            below += rate < quantile ? weight : 0;
        }
        assertEquals(probability, below / all, 1e-4);
    }
}
