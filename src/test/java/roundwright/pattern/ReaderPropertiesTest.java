package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import roundwright.notation.LineMaker;
import roundwright.notation.LineReader;
import roundwright.notation.Node;
import roundwright.notation.Problem;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.notation.Turner;
import roundwright.notation.WrittenLine;

/** What must hold for any text at all. {@code -Dseed=} repeats a run. */
class ReaderPropertiesTest {
    private static final long SEED = Long.getLong("seed", 20260101L);
    private static final int RUNS = 500;

    @Test
    void noLineAndNoPieceOfALineThrows() {
        LineMaker maker = new LineMaker(SEED);
        for (int run = 0; run < RUNS; run++) {
            String line = run % 2 == 0 ? maker.line(20) : maker.sensible();
            for (int cut = 0; cut <= line.length(); cut += 1 + line.length() / 20) {
                read(line.substring(0, cut));
                read(line.substring(cut));
            }
        }
    }

    @Test
    void everySpanLiesInTheLine() {
        LineMaker maker = new LineMaker(SEED);
        for (int run = 0; run < RUNS; run++) {
            String line = maker.line(20);
            Span whole = new Span(0, line.length());
            WrittenLine written = LineReader.read(line);
            written.body().forEach(node -> assertInside(whole, node, line));
            for (Line read : read(line)) {
                for (Problem problem : read.problems()) {
                    assertTrue(whole.contains(problem.span()), () -> "seed " + SEED + ": " + line);
                }
            }
        }
    }

    @Test
    void noCharacterIsCutInTwo() {
        LineMaker maker = new LineMaker(SEED);
        Random random = new Random(SEED);
        for (int run = 0; run < RUNS; run++) {
            StringBuilder line = new StringBuilder(random.nextBoolean() ? "R" + (1 + run % 9) + ": " : "");
            for (String word : maker.line(20).split(" ")) {
                line.append(word)
                        .append(random.nextInt(3) == 0 ? "🍓" : " ")
                        .append(random.nextInt(4) == 0 ? "𝟏" : "");
            }
            for (Line read : read(line.toString())) {
                for (Problem problem : read.problems()) {
                    assertWhole(problem.message());
                    assertWhole(problem.span().of(read.text()));
                    problem.suggestions().forEach(ReaderPropertiesTest::assertWhole);
                }
            }
        }
    }

    private static void assertWhole(String words) {
        String mended = new String(words.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        assertEquals(mended, words, () -> "seed " + SEED);
    }

    private static void assertInside(Span outer, Node node, String line) {
        assertTrue(outer.contains(node.span()), () -> "seed " + SEED + ": " + line + " " + node);
        List<Node> inner = node instanceof Node.Repeat repeat
                ? repeat.body()
                : node instanceof Node.Choice choice ? choice.options() : List.of();
        inner.forEach(child -> assertInside(new Span(0, line.length()), child, line));
    }

    @Test
    void theStepsWrittenOutAddUpToTheSums() {
        LineMaker maker = new LineMaker(SEED);
        for (int run = 0; run < RUNS; run++) {
            String text = (run % 2 == 0 ? maker.sensible() : maker.line(12)).replace('\n', ' ');
            for (Line line : read("R1: 30 sc in MR (30)\n" + text)) {
                line.round().ifPresent(steps -> {
                    assertEquals(line.takes().orElseThrow(), steps.takes(), () -> "seed " + SEED + ": " + text);
                    assertEquals(line.makes().orElseThrow(), steps.makes(), () -> "seed " + SEED + ": " + text);
                });
            }
        }
    }

    @Test
    void everyMendMakesItsLineAddUp() {
        Random random = new Random(SEED);
        int mended = 0;
        for (int run = 0; run < RUNS; run++) {
            int plain = 1 + random.nextInt(6);
            int times = 3 + random.nextInt(6);
            int slip = random.nextBoolean() ? 1 : -1;
            boolean inCount = random.nextBoolean();
            String below = "R1: " + times * (plain + 1) + " sc in MR\n";
            String text = "R2: (" + plain + " sc, inc) x " + (inCount ? times : times + slip) + " ("
                    + (times * (plain + 2) + (inCount ? slip : 0)) + ")";
            for (Problem problem : read(below + text).get(1).problems()) {
                for (String mend : problem.suggestions()) {
                    Line again = read(below + mend).get(1);
                    assertEquals(Verdict.ADDS_UP, again.verdict(), () -> "seed " + SEED + ": " + text + " -> " + mend);
                    mended++;
                }
            }
        }
        assertTrue(mended > RUNS / 2, "only " + mended + " mends were tried");
    }

    @Test
    void termsTurnedThereAndBackAreTheSame() {
        LineMaker maker = new LineMaker(SEED);
        for (int run = 0; run < RUNS; run++) {
            String line = maker.sensible().replace("sc", run % 3 == 0 ? "Single Crochet" : run % 3 == 1 ? "hdc" : "SC");
            String turned = Turner.turn(line, Terms.US, Terms.UK);
            assertFalse(turned.equals(line), line);
            assertEquals(line, Turner.turn(turned, Terms.UK, Terms.US), () -> "seed " + SEED);
        }
    }

    @Test
    void turningChangesNoSum() {
        LineMaker maker = new LineMaker(SEED);
        for (int run = 0; run < RUNS; run++) {
            String line = maker.sensible();
            Line us = read(line).get(0);
            Line uk = PatternReader.readBare(Optional.of(Terms.UK), Turner.turn(line, Terms.US, Terms.UK))
                    .parts()
                    .get(0)
                    .lines()
                    .get(0);
            assertEquals(us.takes(), uk.takes(), () -> "seed " + SEED + ": " + line);
            assertEquals(us.makes(), uk.makes(), () -> "seed " + SEED + ": " + line);
        }
    }

    private static List<Line> read(String text) {
        return PatternReader.readBare(Optional.of(Terms.US), text).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
    }
}
