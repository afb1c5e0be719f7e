package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundwright.notation.LineMaker;

/** Reads made-up lines by the thousand; {@code -Dfuzz.lines=10000000} reads as many as that. */
class FuzzTest {
    private static final long LINES = Long.getLong("fuzz.lines", 20_000L);
    private static final long SEED = Long.getLong("seed", 1L);
    private static final int LINES_A_PATTERN = 20;
    private static final long SLOW = 2_000_000_000L;

    @Test
    void noMadeUpPatternThrowsOrHangs() {
        for (long seed = SEED; seed < SEED + LINES / LINES_A_PATTERN; seed++) {
            String text = pattern(new LineMaker(seed));
            long begin = System.nanoTime();
            try {
                touch(PatternReader.readBare(Optional.empty(), text));
            } catch (RuntimeException | StackOverflowError failure) {
                throw new AssertionError("seed " + seed + ":\n" + text, failure);
            }
            long took = System.nanoTime() - begin;
            long shown = seed;
            assertTrue(took < SLOW, () -> "seed " + shown + " took " + took / 1_000_000 + " ms:\n" + text);
        }
    }

    private static String pattern(LineMaker maker) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LINES_A_PATTERN; i++) {
            text.append(i % 3 == 0 ? maker.sensible() : maker.line(24)).append('\n');
        }
        return text.toString();
    }

    private static void touch(Pattern pattern) {
        for (Part part : pattern.parts()) {
            for (Line line : part.lines()) {
                line.words();
                line.sum();
                line.round();
            }
        }
    }
}
