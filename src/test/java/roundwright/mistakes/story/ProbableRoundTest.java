package roundwright.mistakes.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;
import roundwright.pattern.Part;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

class ProbableRoundTest {
    private static final int RUNS = 4000;

    private record Case(String line, int below, int count, Kinds kinds, int wrong, int takes) {}

    static Stream<Case> cases() {
        return Stream.of(
                new Case("dc in each st around", 33, 32, Kinds.of(Kind.SKIPPED), 1, 33),
                new Case("dc in each st around", 33, 34, Kinds.of(Kind.WORKED_TWICE), 1, 33),
                new Case("(dc, inc) x 6", 12, 17, Kinds.of(Kind.INCREASE_MISSED), 1, 12),
                new Case("(dc, inc) x 6", 12, 16, Kinds.of(Kind.INCREASE_MISSED, Kind.INCREASE_MISSED), 2, 12),
                new Case("(2 dc, dec) x 6", 24, 19, Kinds.of(Kind.DECREASE_MISSED), 1, 24),
                new Case("(dc, inc) x 6", 12, 12, Kinds.of(Kind.SHAPING_LEFT_OUT), 12, 12),
                new Case("(dc, inc) x 6", 12, 17, Kinds.of(Kind.REPEAT_SHORT), 2, 12),
                new Case("(dc, inc) x 6", 12, 21, Kinds.of(Kind.REPEAT_EXTRA), 1, 14),
                new Case("dc in each st around", 20, 18, Kinds.of(Kind.STOPPED_SHORT), 1, 18),
                new Case("dc in each st around", 20, 22, Kinds.of(Kind.RAN_PAST), 2, 22),
                new Case("dc in each st around", 19, 19, Kinds.NONE, 0, 19));
    }

    private static Steps steps(String line, int below) {
        Part part = PatternReader.readBare(
                        Optional.of(Terms.UK), "Rnd 1: " + below + " dc in magic ring (" + below + ")\nRnd 2: " + line)
                .parts()
                .get(0);
        return part.rounds().get(1).steps().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aMistakeStandsInTheRoundAndLeadsToItsCount(Case given) {
        ProbableRound round = ProbableRound.of(
                        new ProbableRound.Known(
                                steps(given.line(), given.below()),
                                List.of(),
                                List.of(given.below()),
                                List.of(given.count())),
                        given.kinds())
                .orElseThrow();
        assertEquals(given.count(), round.steps().makes());
        assertEquals(given.takes(), round.steps().takes());
        assertEquals(given.wrong(), round.wrong().size(), round.wrong().toString());
    }

    @Test
    void whatCannotLeadToTheCountIsNotDrawn() {
        Steps plain = steps("dc in each st around", 20);
        assertEquals(Optional.empty(), of(plain, Kinds.of(Kind.SKIPPED), 20, 21));
        assertEquals(Optional.empty(), of(plain, Kinds.of(Kind.INCREASE_MISSED), 20, 19));
    }

    private static Optional<ProbableRound> of(Steps line, Kinds kinds, int below, int count) {
        return ProbableRound.of(new ProbableRound.Known(line, List.of(), List.of(below), List.of(count)), kinds);
    }

    /** A beginner works many rounds; what the story says of each can be drawn, and comes to the beginner's count. */
    @Test
    void nearlyEveryMistakeOfABeginnerCanBeDrawn() {
        Random random = new Random(Long.getLong("seed", 5));
        List<String> lost = new ArrayList<>();
        int wrong = 0;
        for (int run = 0; run < RUNS; run++) {
            int repeats = 2 + random.nextInt(8);
            int plain = random.nextInt(6);
            String shape = List.of("inc", "dec", "dc").get(random.nextInt(3));
            String line = "(" + (plain == 0 ? "" : plain + " dc, ") + shape + ") x " + repeats;
            int below = repeats * (plain + (shape.equals("dec") ? 2 : 1));
            Steps written = steps(line, below);
            Beginner.Worked worked = new Beginner(Rates.STORY, random).work(WrittenRound.of(written), List.of(), below);
            if (!worked.kinds().none()) {
                wrong++;
                Optional<ProbableRound> round = of(written, worked.kinds(), below, worked.made());
                round.ifPresentOrElse(
                        found -> assertEquals(worked.made(), found.steps().makes(), line + " " + worked),
                        () -> lost.add(line + " " + worked));
            }
        }
        assertTrue(wrong > RUNS / 10, "only " + wrong + " went wrong");
        assertTrue(lost.size() <= wrong / 10, lost.size() + " of " + wrong + ": " + lost);
    }

    @Test
    void aMistakeAtTheStartAddsToTheRing() {
        Steps ring = PatternReader.readBare(Optional.of(Terms.UK), "Rnd 1: 6 dc in magic ring (6)")
                .parts()
                .get(0)
                .rounds()
                .get(0)
                .steps()
                .orElseThrow();
        ProbableRound round = of(ring, Kinds.of(Kind.WRONG_START), 0, 7).orElseThrow();
        assertEquals(7, round.steps().makes());
        assertEquals(Step.Action.INTO_RING, round.steps().list().get(6).action());
    }
}
