package roundwright.mistakes.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.mistakes.story.Enumeration.Outcome;
import roundwright.pattern.Steps;

/** Rounds too large to enumerate: against the story acted out, and against what must hold of any round. */
class LargeRoundTest {
    private static final int ROUNDS = 200_000;

    /** In a normal distribution one outcome in fifty thousand is further off than so many standard errors. */
    private static final double STANDARD_ERRORS = 4.3;

    private record Case(String name, Steps own, List<Steps> neighbours, int below) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Case> rounds() {
        Steps growing = Written.round("", "ppppi", 6, "");
        Steps shrinking = Written.round("pp", "ppppd", 6, "pp");
        return List.of(
                new Case("plain 40", Written.plain(40), List.of(growing, shrinking), 40),
                new Case("plain 40 on 43", Written.plain(40), List.of(), 43),
                new Case("increases on 30", growing, List.of(Written.plain(30)), 30),
                new Case("increases on 28", growing, List.of(Written.plain(30)), 28),
                new Case("increases on 33", growing, List.of(), 33),
                new Case("decreases on 40", shrinking, List.of(Written.plain(40), growing), 40),
                new Case("decreases on 37", shrinking, List.of(), 37),
                new Case("plain 90", Written.plain(90), List.of(), 90));
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void theStoryActedOutComesToTheSame(Case round) {
        Map<Outcome, Integer> seen = new Simulation(1, round.own(), round.neighbours()).work(ROUNDS, round.below());
        Landing landing = landing(round);
        Map<Outcome, Double> said = said(landing);
        Map<Integer, Integer> counts = new HashMap<>();
        seen.forEach((outcome, times) -> counts.merge(outcome.made(), times, Integer::sum));
        counts.forEach((made, times) -> close(round + " makes " + made, landing.chance(made), times));
        said.forEach((outcome, chance) -> {
            if (chance > 2e-4) {
                close(round + " " + outcome, chance, seen.getOrDefault(outcome, 0));
            }
        });
        seen.forEach((outcome, times) -> {
            if (times > ROUNDS / 2000) {
                close(round + " " + outcome, said.getOrDefault(outcome, 0.0), times);
            }
        });
    }

    private static void close(String name, double chance, int times) {
        double error = Math.sqrt(Math.max(chance, 1.0 / ROUNDS) / ROUNDS);
        assertEquals(chance, times / (double) ROUNDS, STANDARD_ERRORS * error + 1.5 / ROUNDS, name);
    }

    private static Landing landing(Case round) {
        List<WrittenRound> neighbours =
                round.neighbours().stream().map(WrittenRound::of).toList();
        return RoundStory.of(WrittenRound.of(round.own()), neighbours, Rates.STORY)
                .at(round.below());
    }

    private static Map<Outcome, Double> said(Landing landing) {
        Map<Outcome, Double> said = new HashMap<>();
        for (int made = landing.from(); made < landing.to(); made++) {
            int count = made;
            landing.forEachOutcome(made, (code, chance) -> {
                List<String> kinds =
                        new Kinds(code).list().stream().map(Kind::word).toList();
                said.merge(new Outcome(count, kinds), chance, Double::sum);
                return true;
            });
        }
        return said;
    }

    /** What is left out where slips are no longer followed is less than a hundred-thousandth of a percent. */
    @ParameterizedTest
    @MethodSource("rounds")
    void almostNothingIsLeftOut(Case round) {
        Landing landing = landing(round);
        double total = 0;
        double named = 0;
        for (int made = landing.from(); made < landing.to(); made++) {
            total += landing.chance(made);
        }
        for (double chance : said(landing).values()) {
            named += chance;
        }
        assertEquals(1, total, 1e-7);
        assertEquals(1, named, 2e-4);
    }

    /** The program's own inventor of students works by the same story. */
    @ParameterizedTest
    @MethodSource("rounds")
    void inventedStudentsWorkByTheStory(Case round) {
        Beginner beginner = new Beginner(Rates.STORY, new SplittableRandom(3));
        List<WrittenRound> neighbours =
                round.neighbours().stream().map(WrittenRound::of).toList();
        Map<Outcome, Integer> seen = new HashMap<>();
        for (int time = 0; time < ROUNDS; time++) {
            Beginner.Worked worked = beginner.work(WrittenRound.of(round.own()), neighbours, round.below());
            List<String> kinds = worked.kinds().list().stream().map(Kind::word).toList();
            seen.merge(new Outcome(worked.made(), new ArrayList<>(kinds)), 1, Integer::sum);
        }
        said(landing(round)).forEach((outcome, chance) -> {
            if (chance > 2e-4) {
                close(round + " " + outcome, chance, seen.getOrDefault(outcome, 0));
            }
        });
    }

    @Test
    void aVeryLongRoundIsWorkedOutInTime() {
        long before = System.nanoTime();
        Landing landing = RoundStory.of(WrittenRound.of(Written.plain(1500)), List.of(), Rates.STORY)
                .at(1500);
        assertTrue(landing.chance(1500) > 0);
        double milliseconds = (System.nanoTime() - before) / 1e6;
        assertTrue(milliseconds < 3000, "a round of 1500 stitches took " + milliseconds + " ms");
    }
}
