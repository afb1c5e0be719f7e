package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundwright.notation.Terms;

/** A piece's outline and yarn against what the trade's formulas and a worked ball say. */
class OutlineTest {
    private static final Tension SQUARE = new Tension(6, 6);

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

    @Test
    void doublingEveryStitchRuffles() {
        List<Outline.Ring> rings = Outline.of(part("R1: 12 sc in MR\nR2: inc x 12\nR3: inc x 24"), SQUARE);
        assertTrue(rings.get(2).ruffles());
    }

    @Test
    void aBallTakesAboutTwentyFourMetresWithMarginAndTail() {
        Part ball = part("""
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
                """);
        assertEquals(24, Yarn.metres(ball, SQUARE), 1.5);
    }

    private static Part part(String lines) {
        return PatternReader.readBare(Optional.of(Terms.US), lines).parts().get(0);
    }
}
