package roundwright.pattern.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.mistakes.story.Written;
import roundwright.notation.Terms;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Steps;
import roundwright.pattern.WorkedAs;

class ChartDrawingTest {
    private static final double WIDTH = 400;

    private static ChartDrawing draw(Steps steps, ChartSetting setting) {
        return ChartDrawing.of(RoundChart.of(steps), WIDTH, setting);
    }

    /** The signs' x in working order, one a step. */
    private static List<Double> across(Steps steps, ChartSetting setting) {
        ChartDrawing drawing = draw(steps, setting);
        return Stream.iterate(0, step -> step + 1)
                .limit(steps.list().size())
                .map(step -> drawing.standsOf(step).get(0).x())
                .toList();
    }

    @Test
    void aFirstRowIsWorkedFromTheRightAndTheNextGoesBack() {
        Steps plain = Written.plain(9);
        List<Double> first = across(plain, ChartSetting.of(WorkedAs.ROWS, 1, false));
        List<Double> second = across(plain, ChartSetting.of(WorkedAs.ROWS, 2, false));
        assertEquals(first.stream().sorted(java.util.Comparator.reverseOrder()).toList(), first);
        assertEquals(second.stream().sorted().toList(), second);
    }

    @ParameterizedTest
    @MethodSource("everyWay")
    void aLeftHandSeesTheMirrorImage(WorkedAs worked) {
        Steps round = Written.round("p", "ppid", 5, "p");
        List<Double> right = across(round, ChartSetting.of(worked, 1, false));
        List<Double> left = across(round, ChartSetting.of(worked, 1, true));
        for (int step = 0; step < right.size(); step++) {
            assertEquals(WIDTH - right.get(step), left.get(step), 1e-6, worked + " step " + step);
        }
    }

    static Stream<WorkedAs> everyWay() {
        return Stream.of(WorkedAs.values());
    }

    @Test
    void aRingIsWorkedAnticlockwiseFromTheTop() {
        List<Double> across = across(Written.plain(8), ChartSetting.ring(false));
        assertTrue(across.get(0) < WIDTH / 2 && across.get(7) > WIDTH / 2, across.toString());
    }

    @Test
    void nothingOfAnyRoundLeavesTheSheet() {
        Random random = new Random(11);
        for (int run = 0; run < 300; run++) {
            int times = 1 + random.nextInt(20);
            Steps steps = Written.round("", random.nextBoolean() ? "ppi" : "pspd", times, "pp");
            WorkedAs worked = WorkedAs.values()[random.nextInt(3)];
            ChartSetting setting =
                    ChartSetting.of(worked, run, random.nextBoolean()).marking(Set.of(0));
            ChartDrawing drawing = draw(steps, setting);
            for (ChartDrawing.Stroke stroke : drawing.strokes()) {
                assertTrue(
                        inside(stroke.mark().shape().getBounds2D(), drawing),
                        "run " + run + ": " + worked + " " + stroke);
            }
            assertEquals(
                    steps.makes() + RoundChart.of(steps).passedOver().size(),
                    drawing.stands().size(),
                    "run " + run);
        }
    }

    private static boolean inside(Rectangle2D shape, ChartDrawing sheet) {
        return shape.getMinX() >= 0
                && shape.getMinY() >= 0
                && shape.getMaxX() <= sheet.width()
                && shape.getMaxY() <= sheet.height();
    }

    @Test
    void whatWentWrongHasARingOfItsOwn() {
        Steps steps = Written.round("ppsppp");
        ChartDrawing drawing = draw(steps, ChartSetting.ring(false).marking(Set.of(2)));
        List<ChartDrawing.Stroke> rings = drawing.strokes().stream()
                .filter(stroke -> stroke.ink() == ChartDrawing.Ink.WRONG)
                .toList();
        assertEquals(1, rings.size());
        assertEquals(2, rings.get(0).step());
    }

    @Test
    void theNearestSignIsFound() {
        Steps steps = Written.plain(12);
        ChartDrawing drawing = draw(steps, ChartSetting.ring(false));
        ChartDrawing.Stand stand = drawing.standsOf(5).get(0);
        assertEquals(Optional.of(5), drawing.nearest(stand.x() + 2, stand.y() - 1));
    }

    private record Case(String text, WorkedAs worked) {}

    static Stream<Case> patterns() {
        return Stream.of(
                new Case("Rnd 1: 6 dc in magic ring (6)\nRnd 2: inc x 6 (12)", WorkedAs.ROUNDS),
                new Case(
                        "Ch 11. Row 1: dc in 2nd ch from hook and in each ch across. Turn. (10)\n"
                                + "Row 2: ch 1, dc in each st across, turn. (10)",
                        WorkedAs.ROWS),
                new Case(
                        "Ch 6.\nRnd 1: dc in 2nd ch from hook, 3 dc, 3 dc in last ch, working along the other side of"
                                + " the chain: 3 dc, 2 dc in last ch (12)",
                        WorkedAs.OVAL));
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void howAPartIsWorkedIsToldFromItsLines(Case given) {
        var part = PatternReader.readBare(Optional.of(Terms.UK), given.text())
                .parts()
                .get(0);
        assertEquals(given.worked(), WorkedAs.of(part));
    }
}
