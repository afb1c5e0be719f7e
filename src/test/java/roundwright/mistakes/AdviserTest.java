package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.mistakes.Advice.Choice;
import roundwright.mistakes.Advice.Way;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Round;

class AdviserTest {
    private static final Adviser AT_SIX = new Adviser(Trials.BELL, OptionalDouble.of(6));

    private static Optional<Advice> advice(int... counts) {
        List<Explanation> all = Trials.counts(counts);
        return AT_SIX.of(all.get(all.size() - 1), all.subList(0, all.size() - 1));
    }

    private static Choice choice(Advice advice, Way way) {
        return advice.choices().stream()
                .filter(choice -> choice.way() == way)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRoundThatIsMostLikelyRightNeedsNothingDone() {
        assertEquals(Optional.empty(), advice(6, 12, 18, 24, 24));
        assertEquals(Optional.empty(), advice(6, 12, 18, 24, 34));
    }

    @Test
    void oneTooManyIsPutRightInTheNextRound() {
        Advice advice = advice(6, 12, 18, 24, 25).orElseThrow();
        assertEquals(1, advice.over());
        assertEquals(Way.PUT_RIGHT, advice.best().way());
        assertEquals(6, advice.best().toRound());
        assertEquals(Optional.of("Rnd 6: 11 dc, dec, 12 dc (24)"), advice.best().line());
        Choice back = choice(advice, Way.PULL_BACK);
        assertTrue(back.open());
        assertEquals(4, back.toRound());
        assertEquals(1 + 24 / 6.0, back.minutes(), 1e-9);
        assertFalse(choice(advice, Way.LEAVE).open());
    }

    @Test
    void threeTooManyIsPulledBack() {
        Advice advice = advice(6, 12, 18, 24, 24, 24, 33).orElseThrow();
        assertEquals(Way.PULL_BACK, advice.best().way());
        assertEquals(6, advice.best().toRound());
        assertTrue(choice(advice, Way.PUT_RIGHT).words().contains("3 stitches"));
    }

    @Test
    void aStartWithFiveIsStartedAgain() {
        Advice advice = advice(5, 10, 15, 20).orElseThrow();
        Choice back = choice(advice, Way.PULL_BACK);
        assertEquals(0, back.toRound());
        assertEquals(1 + (6 + 12 + 18 + 24) / 6.0, back.minutes(), 1e-9);
    }

    @Test
    void whatWasPutRightALittleWhileAgoIsNotPutRightAgain() {
        Advice advice = advice(6, 12, 18, 24, 25, 24, 30, 31).orElseThrow();
        assertFalse(choice(advice, Way.PUT_RIGHT).open());
        assertEquals(Way.PULL_BACK, advice.best().way());
    }

    @Test
    void leftAloneTheLaterCountsAreThoseOfTheRoundsWorkedOnIt() {
        Choice leave = choice(advice(6, 12, 18, 24, 25).orElseThrow(), Way.LEAVE);
        assertEquals(
                List.of(
                        new Advice.LaterCount(6, 25),
                        new Advice.LaterCount(7, 31),
                        new Advice.LaterCount(8, 31),
                        new Advice.LaterCount(9, 31)),
                leave.laterCounts());
    }

    private record Mend(String name, String line, int over, String mended) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Mend> mends() {
        return List.of(
                new Mend("one over, plain", "dc in each st around (24)", 1, "Rnd 2: 11 dc, dec, 12 dc (24)"),
                new Mend("one short, plain", "dc in each st around (24)", -1, "Rnd 2: 11 dc, inc, 11 dc (24)"),
                new Mend("two over, plain", "dc in each st around (24)", 2, "Rnd 2: 5 dc, dec, 11 dc, dec, 6 dc (24)"),
                new Mend(
                        "one over, increases",
                        "(4 dc, inc) x 4 (24)",
                        1,
                        "Rnd 2: (4 dc, inc) x 2, dc, dec, 2 dc, inc, 4 dc, inc (24)"),
                new Mend("no room", "inc x 6 (12)", 1, ""));
    }

    @ParameterizedTest
    @MethodSource("mends")
    void theNextLineTakesItUp(Mend mend) {
        Round round = round(Terms.UK, mend.line());
        assertEquals(
                mend.mended(), new Mending(Terms.UK, round).line(mend.over()).orElse(""));
    }

    private static Round round(Terms terms, String line) {
        Line read = PatternReader.readBare(Optional.of(terms), "Rnd 2: " + line)
                .parts()
                .get(0)
                .lines()
                .get(0);
        return new Round(2, read, read.round(), read.count());
    }

    /** Whatever the round: what is written is read as using what there is and making what was asked. */
    @Test
    void everyMendedLineAddsUp() {
        Random random = new Random(4);
        int written = 0;
        for (int run = 0; run < 300; run++) {
            Terms terms = run % 2 == 0 ? Terms.UK : Terms.US;
            String plain = terms == Terms.UK ? "dc" : "sc";
            int width = random.nextInt(6);
            String shaping = List.of("inc", "dec", plain).get(random.nextInt(3));
            String line =
                    "(" + (width == 0 ? "" : width + " " + plain + ", ") + shaping + ") x " + (2 + random.nextInt(7));
            Round round = round(terms, line);
            int over = List.of(-2, -1, 1, 2).get(random.nextInt(4));
            Optional<String> mended = new Mending(terms, round).line(over);
            if (mended.isPresent()) {
                written++;
                Pattern read = PatternReader.readBare(Optional.of(terms), mended.get());
                var steps = read.parts().get(0).lines().get(0).round().orElseThrow();
                String what = line + " with " + over + ": " + mended.get();
                assertEquals(round.steps().orElseThrow().takes() + over, steps.takes(), what);
                assertEquals(round.count().orElseThrow(), steps.makes(), what);
            }
        }
        assertTrue(written > 150, written + " of 300 could be written");
    }
}
