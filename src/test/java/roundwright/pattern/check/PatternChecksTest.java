package roundwright.pattern.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

/** Each check of a whole pattern speaks where it must, at the right line, and is silent elsewhere. */
class PatternChecksTest {
    private static final String DISC =
            "R1: 6 sc in MR (6)\nR2: inc x 6 (12)\nR3: (sc, inc) x 6 (18)\nR4: (2 sc, inc) x 6 (24)\n";
    private static final String LEG =
            "# Leg (make 2)\nR1: 6 sc in MR (6)\nR2: inc x 6 (12)\nR3-6: sc around (12)\nFasten off.\n";

    /** @param said what is said, {@code the line's beginning: key}, in order */
    private record Case(String name, String text, String... said) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Case> joins() {
        return Stream.of(
                new Case(
                        "goes on and matches",
                        "# Base\n" + DISC + "# Wall\nGo on from the base.\nR1: sc in each st around (24)"),
                new Case(
                        "goes on with more than there are",
                        "# Base\n" + DISC + "# Wall\nGo on from the base.\nR1: sc in each st around (26)",
                        "R1: sc in: goes-on-too-many"),
                new Case(
                        "goes on with fewer, the part above being meant",
                        "# Base\n" + DISC + "# Wall\nContinue in a spiral.\nR1: (3 sc, dec) x 4 (16)",
                        "R1: (3 sc,: goes-on-too-few"),
                new Case(
                        "goes on from a round that is named",
                        "# Base\n" + DISC
                                + "# Frill\nJoin yarn in any front loop of round 3.\nR1: sc in each st around (18)"),
                new Case(
                        "goes on from a round that is named, and does not match",
                        "# Base\n" + DISC
                                + "# Frill\nJoin yarn in any front loop of round 3.\nR1: sc in each st around (20)",
                        "R1: sc in: goes-on-too-many"),
                new Case("numbered on over a gap", DISC + "\nR5: (3 sc, inc) x 6 (30)"),
                new Case(
                        "numbered on, one too many",
                        DISC + "\nR5: (4 sc, inc) x 5 (30)",
                        "R5: (4 sc,: goes-on-too-many"),
                new Case("another part of its own", "# Base\n" + DISC + "# Ear\nR1: 5 sc in MR (5)"),
                new Case("a part without a ring that says nothing", "# Base\n" + DISC + "# Ear\nR1: 5 sc\nR2: inc x 5"),
                new Case("a flap of some of the stitches", DISC + "\nR5: sc in next 10 sts, turn (10)"),
                new Case(
                        "limbs match",
                        LEG
                                + "# Body\nR7: 12 sc around the first leg, ch 3, 12 sc around the second leg, 3 sc along the chain (30)"),
                new Case(
                        "a limb with more than it has",
                        LEG
                                + "# Body\nR7: sc in 14 sts of first leg, ch 2, sc in 14 sts of second leg, sc in 2 ch (32)",
                        "R7: sc in: limb-too-many"),
                new Case("sewn somewhere", LEG + "# Body\n" + DISC + "Sew the legs to the body."),
                new Case(
                        "sewn edge to edge, unequal",
                        LEG + "# Body\n" + DISC + "Sew the leg to the body, edge to edge.",
                        "Sew the le: sewn-unequal"),
                new Case("sewn edge to edge", "# Front\n" + DISC + "# Back\n" + DISC + "Sew front and back together."));
    }

    private static Stream<Case> working() {
        return Stream.of(
                new Case("a frill of twice as many", DISC + "R5: 2 sc in each st (48)"),
                new Case("four times as many", DISC + "R5: 4 sc in each st (96)", "R5: 4 sc i: growth-ruffles"),
                new Case("shells", DISC + "R5: (sc, skip 2, 5 dc in next st, skip 2) x 4 (24)"),
                new Case("gathered to a third", DISC + "R5: sc3tog x 8 (8)", "R5: sc3tog: shrinks-gathers"),
                new Case("halved", DISC + "R5: sc2tog x 12 (12)"),
                new Case(
                        "two stitches in the round",
                        "R1: 2 sc in MR (2)\nR2: inc x 2 (4)",
                        "R1: 2 sc i: round-too-small"),
                new Case("a point of four", "R1: 4 sc in MR (4)\nR2: (sc, inc) x 2 (6)"),
                new Case("a cord of three", "R1: 3 sc in MR (3)\nR2-9: sc around (3)"),
                new Case(
                        "decreased to two and worked on",
                        "R1: 4 sc in MR (4)\nR2: dec x 2 (2)\nR3: sc around (2)\nR4: inc x 2 (4)",
                        "R2: dec x: round-too-small",
                        "R3: sc aro: round-too-small"),
                new Case("drawn to a point at the end", "R1: 4 sc in MR (4)\nR2: dec x 2 (2)"),
                new Case(
                        "a triangle in rows",
                        "Row 1: ch 2, 1 sc in 2nd ch from hook, turn (1)\nRow 2: ch 1, 2 sc in st, turn (2)\nRow 3: ch 1, inc, sc, turn (3)"),
                new Case("a blanket's edge", "R1: 900 sc in MR (900)"),
                new Case("absurdly many", "R1: 9000 sc in MR (9000)", "R1: 9000 s: count-absurd"),
                new Case("absurdly long", "R1: 6 sc in MR (6)\nR2-1000: sc around (6)", "R2-1000: s: range-absurd"));
    }

    private static Stream<Case> closing() {
        return Stream.of(
                new Case("closes", DISC + "R5: dec x 12 (12)\nStuff.\nR6: dec x 6 (6)\nFasten off and close the hole."),
                new Case("too wide a hole", DISC + "Fasten off and close the hole.", "Fasten off: hole-too-wide"),
                new Case("joined to close a round", "R1: 24 sc in MR, sl st to close (24)\nFasten off."),
                new Case("pressed flat and sewn", DISC + "Press flat and sew the opening closed."),
                new Case("a long tail", DISC + "Stuff. Fasten off, leaving a long tail for sewing."),
                new Case("stuffed and left", DISC + "Stuff firmly.\nFasten off.", "Fasten off: left-open"),
                new Case("not stuffed", DISC + "Fasten off."),
                new Case(
                        "stuffed, sewn on later",
                        "# Head\n" + DISC + "Stuff firmly. Fasten off.\n# Body\n" + DISC + "Sew the head on."),
                new Case("an open bowl", DISC + "R5-9: sc around (24)\nFasten off and weave in the ends."));
    }

    @ParameterizedTest
    @MethodSource({"joins", "working", "closing"})
    void speaksWhereItMustAndNowhereElse(Case test) {
        Pattern pattern = PatternReader.readBare(Optional.of(Terms.US), test.text());
        PatternChecks checks = PatternChecks.of(pattern);
        List<String> said = pattern.parts().stream()
                .flatMap(part -> part.lines().stream())
                .flatMap(line -> checks.beyond(line).stream()
                        .map(problem -> line.text()
                                        .substring(0, Math.min(10, line.text().length()))
                                        .strip() + ": " + problem.key()))
                .toList();
        assertEquals(List.of(test.said()), said);
    }

    @Test
    void aLongPatternOfManyPartsIsCheckedQuickly() {
        StringBuilder text = new StringBuilder();
        for (int part = 0; part < 300; part++) {
            text.append("# Limb")
                    .append((char) ('a' + part % 26))
                    .append(part)
                    .append('\n')
                    .append(DISC);
            text.append("Sew everything together and go on from limb ")
                    .append(part)
                    .append(".\n\n");
        }
        Pattern pattern = PatternReader.readBare(Optional.of(Terms.US), text);
        assertTimeout(Duration.ofSeconds(2), () -> PatternChecks.of(pattern));
    }
}
