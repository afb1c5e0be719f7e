package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;

/** A piece's outline and yarn against what the trade's formulas and a worked ball say. */
class OutlineTest {
    private static final Tension SQUARE = new Tension(6, 6);

    private static final String BALL = """
                R1: 6 sc in MR
                R2: inc x 6
                R3: (sc, inc) x 6
                R4: (2 sc, inc) x 6
                R5: (3 sc, inc) x 6
                R6: (4 sc, inc) x 6
                R7-12: sc around
                R13: (4 sc, dec) x 6
                R14: (3 sc, dec) x 6
                R15: (2 sc, dec) x 6
                R16: (sc, dec) x 6
                R17: dec x 6
                """;

    @Test
    void aTubeOfThirtySixStitchesIsSixtyNineMillimetresAcross() {
        assertEquals(68.75, 2 * Outline.radius(36, SQUARE), 0.01);
    }

    @Test
    void sixMoreARoundLieNearlyFlatAndEvenRoundsStand() {
        List<Outline.Ring> rings =
                Outline.of(part("R1: 6 sc in MR\nR2: inc x 6\nR3: (sc, inc) x 6\nR4-6: sc around"), SQUARE);
        assertEquals(6, rings.size());
        assertTrue(rings.get(2).height() < 2 * 2, "a disc lies nearly flat: " + rings);
        assertEquals(6, rings.get(5).height() - rings.get(4).height(), 0.001);
        assertFalse(rings.get(2).ruffles());
    }

    /**
     * A piece that changes by so many stitches a round.
     *
     * @param halfAngle of the cone in degrees: sin = change × width ÷ (2π × height); 90 lies flat, 0 stands
     */
    private record Cone(String lines, double halfAngle) {}

    private static Stream<Cone> cones() {
        return Stream.of(
                new Cone("R1: 12 sc in MR\nR2: (2 sc, inc) x 4\nR3: 16 sc\nR4: 16 sc", 39.5),
                new Cone("R1: 12 sc in MR\nR2: (3 sc, inc) x 3", 28.5),
                new Cone("R1: 12 sc in MR\nR2: (5 sc, inc) x 2", 18.6),
                new Cone("R1: 12 sc in MR\nR2: (2 sc, dec) x 3", 28.5),
                new Cone("R1: 12 sc in MR\nR2: 12 sc", 0),
                new Cone("R1: 12 sc in MR\nR2: (sc, inc) x 6", 72.7),
                new Cone("R1: 12 sc in MR\nR2: 4 sc, 8 inc", 90));
    }

    @ParameterizedTest
    @MethodSource("cones")
    void aConeLeansAsItsChangeAndHeightSay(Cone cone) {
        List<Outline.Ring> rings = Outline.of(part(cone.lines()), SQUARE);
        double across = Math.abs(rings.get(1).radius() - rings.get(0).radius());
        double up = rings.get(1).height() - rings.get(0).height();
        assertEquals(cone.halfAngle(), Math.toDegrees(Math.atan2(across, up)), 0.1);
    }

    @Test
    void aBallEndsAsWideAsItBeganAndAboutAsTallAsWide() {
        List<Outline.Ring> rings = Outline.of(part(BALL), SQUARE);
        double wide = rings.stream().mapToDouble(Outline.Ring::radius).max().orElseThrow() * 2;
        Outline.Ring last = rings.get(rings.size() - 1);
        assertEquals(rings.get(0).radius(), last.radius(), 0.001);
        assertEquals(wide, last.height(), wide * 0.25, rings::toString);
    }

    @Test
    void eighteenStitchesAndTwentyRoundsToTenCentimetres() {
        Tension tension = Tension.toTenCentimetres(18, 20);
        assertEquals(5.56, tension.width(), 0.01);
        assertEquals(5, tension.height(), 0.01);
    }

    @Test
    void doublingEveryStitchRuffles() {
        List<Outline.Ring> rings = Outline.of(part("R1: 12 sc in MR\nR2: inc x 12\nR3: inc x 24"), SQUARE);
        assertTrue(rings.get(2).ruffles());
    }

    @Test
    void aBallTakesAboutTwentyFourMetresWithMarginAndTail() {
        Part ball = part(BALL);
        assertEquals(24, Yarn.metres(ball, SQUARE), 1.5);
    }

    private static Part part(String lines) {
        return PatternReader.readBare(Optional.of(Terms.US), lines).parts().get(0);
    }
}
