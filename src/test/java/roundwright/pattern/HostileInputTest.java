package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;

/** Text that means harm, or that a copying accident made, is answered quickly and with a problem. */
class HostileInputTest {
    private static final int LARGE = 1_000_000;

    private record Case(String name, String text) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Case> large() {
        return Stream.of(
                new Case("opening brackets", "R1: " + "(".repeat(LARGE)),
                new Case("closing brackets", "R1: sc " + ")".repeat(LARGE)),
                new Case("pairs of brackets", "R1: " + "()".repeat(LARGE / 2)),
                new Case("nested steps", "R1: " + "(sc, ".repeat(LARGE / 5) + ")x2".repeat(LARGE / 5)),
                new Case("asterisks", "R1: " + "*".repeat(LARGE)),
                new Case("steps", "R1: " + "sc, ".repeat(LARGE / 4)),
                new Case("two of each", "R1: " + "2 sc, ".repeat(LARGE / 6)),
                new Case("digits", "R1: " + "9".repeat(LARGE)),
                new Case("labels", "Rnd 1 ".repeat(LARGE / 6)),
                new Case("one word", "a".repeat(LARGE)),
                new Case("many words", "glorp ".repeat(LARGE / 6)),
                new Case("counts", "R1: sc " + "(18) ".repeat(LARGE / 5)),
                new Case("equals", "sc = ".repeat(LARGE / 5)),
                new Case("repeats", "R1: sc, inc" + " x 9".repeat(LARGE / 4)),
                new Case("repeat words", "R1: sc, inc" + ", repeat".repeat(LARGE / 8)),
                new Case("chains", "R1: ch 3, " + "ch 1, ".repeat(LARGE / 6)),
                new Case("joins", "R1: sc, " + "join ".repeat(LARGE / 5)),
                new Case("commas", ",".repeat(LARGE)),
                new Case("nothing visible", "\u200b".repeat(LARGE)),
                new Case("combining dots", "i\u0307".repeat(LARGE / 2)));
    }

    @ParameterizedTest
    @MethodSource("large")
    void aMegabyteOfOneThingIsAnsweredInTime(Case hostile) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(2), () -> PatternReader.readBare(Optional.empty(), hostile.text()));
    }

    private static Stream<Case> huge() {
        return Stream.of(
                new Case("a repeat of a billion", "R1: (sc, inc) x 1000000000"),
                new Case("nested repeats", "R1: ((((sc x 99999) x 99999) x 99999) x 99999) x 99999"),
                new Case("a number without end", "R1: 99999999999999999999 sc"),
                new Case("a range without end", "Rnds 1-999999999: inc in each st around"),
                new Case("a repeat of a round", "R1: 6 sc in MR\nR2: inc in each st\nRepeat round 2 999999999 times"));
    }

    @ParameterizedTest
    @MethodSource("huge")
    void whatNoHandCouldWorkGetsAProblemAndNoCount(Case hostile) {
        Line last = assertTimeoutPreemptively(Duration.ofSeconds(1), () -> {
            List<Part> parts = PatternReader.readBare(Optional.of(Terms.US), hostile.text())
                    .parts();
            List<Line> lines = parts.get(0).lines();
            return lines.get(lines.size() - 1);
        });
        assertEquals(Verdict.NOT_UNDERSTOOD, last.verdict());
        assertFalse(last.problems().isEmpty());
        assertFalse(last.makes().isPresent());
    }

    @Test
    void theTimeGrowsWithTheLengthOfTheLine() {
        time(20_000);
        long small = time(20_000);
        long large = time(200_000);
        assertEquals(true, large < 60 * Math.max(small, 1_000_000), small + " ns, then " + large + " ns");
    }

    private static long time(int steps) {
        String line = "R1: " + "2 sc in next st, ".repeat(steps);
        long begin = System.nanoTime();
        PatternReader.readBare(Optional.of(Terms.US), line);
        return System.nanoTime() - begin;
    }
}
