package roundwright.technique;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

class FirstUsesTest {
    record Written(Terms terms, String line, String uses) {}

    static List<Written> lines() {
        return List.of(
                new Written(Terms.UK, "Rnd 1: 6 dc in magic ring (6)", "double-crochet magic-ring"),
                new Written(Terms.US, "Rnd 1: 6 sc in MR (6)", "double-crochet magic-ring"),
                new Written(Terms.UK, "Rnd 1: ch 2, 6 dc in 2nd ch from hook (6)", "chain double-crochet chain-start"),
                new Written(Terms.UK, "Rnd 3: (dc, inc) x 6 (18)", "double-crochet increase"),
                new Written(Terms.US, "Rnd 3: (sc, inc) x 6 (18)", "double-crochet increase"),
                new Written(Terms.UK, "Rnd 3: (4 dc, dec) x 6 (30)", "double-crochet decrease"),
                new Written(Terms.US, "Rnd 3: (4 sc, inv dec) x 6 (30)", "double-crochet invisible-decrease"),
                new Written(
                        Terms.UK,
                        "Rnd 3: in back loops only, dc in each st around (18)",
                        "double-crochet back-loop-only"),
                new Written(Terms.US, "Rnd 3: FLO sc in each st around (18)", "double-crochet front-loop-only"),
                new Written(
                        Terms.UK,
                        "Rnd 3: ch 1, dc in each st around, join with ss in first dc (18)",
                        "chain double-crochet slip-stitch joined-rounds"),
                new Written(Terms.US, "Rnd 3: hdc in each st around (18)", "half-treble"),
                new Written(Terms.US, "Rnd 3: dc in each st around (18)", "treble"),
                new Written(Terms.UK, "Rnd 3: (2 dc, bobble) x 6 (18)", "double-crochet bobble"),
                new Written(
                        Terms.UK,
                        "Rnd 3: (dc, miss 2, 5 tr in next st, miss 2) x 3 (18)",
                        "double-crochet treble shell"),
                new Written(Terms.UK, "Rnd 3: crab st in each st around (18)", "crab-stitch"),
                new Written(Terms.UK, "Change to red.", "colour-change"),
                new Written(Terms.US, "Switch to the cream yarn.", "colour-change"),
                new Written(Terms.UK, "Stuff the tower firmly.", "stuffing"),
                new Written(Terms.UK, "Do not stuff the ears.", ""),
                new Written(Terms.UK, "Don't fasten off.", ""),
                new Written(Terms.UK, "Fasten off, leaving a long tail for sewing.", "fastening-off"),
                new Written(Terms.UK, "Fasten off and close the hole.", "closing-the-last-round fastening-off"),
                new Written(Terms.UK, "Sew the lantern to the gallery.", "sewing-on"),
                new Written(Terms.UK, "Pin the roof and sew it on.", "sewing-on"),
                new Written(Terms.UK, "Weave in all ends.", "weaving-in-ends"),
                new Written(Terms.US, "Insert safety eyes between rounds 7 and 8.", "placing-features"),
                new Written(Terms.UK, "Embroider a door on the front.", "placing-features"),
                new Written(Terms.UK, "Join the legs to the body.", "joining-parts"),
                new Written(Terms.UK, "With gold. Join it in any front loop of round 10.", ""),
                new Written(
                        Terms.UK, "Rnd 1: 6 dc in magic ring (6), pull the ring tight", "double-crochet magic-ring"),
                new Written(Terms.US, "FO. Close the hole with a yarn needle.", "closing-the-last-round fastening-off"),
                new Written(Terms.UK, "Finish off and sew the gap shut.", "closing-the-last-round fastening-off"),
                new Written(
                        Terms.UK,
                        "Break yarn, thread it through the remaining stitches.",
                        "closing-the-last-round fastening-off"),
                new Written(Terms.US, "Bobble (bo): yarn over, pull up a loop, five times.", ""),
                new Written(Terms.US, "Materials: worsted yarn, 3.5 mm hook, stuffing", ""),
                new Written(Terms.UK, "Put the kettle on.", ""));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void findsWhatALineUses(Written written) {
        Line line = pattern(written.terms(), "Rnd 2: 18 dc (18)\n" + written.line())
                .parts()
                .get(0)
                .lines()
                .get(1);
        assertEquals(written.uses(), String.join(" ", Techniques.catalogue().uses(line)));
    }

    private static Pattern pattern(Terms terms, String text) {
        return PatternReader.readBare(Optional.of(terms), text);
    }

    private static FirstUses uses(String text) {
        return FirstUses.of(pattern(Terms.UK, text), Techniques.catalogue());
    }

    private static final String BALL = """
            With cream.
            Rnd 1: 6 dc in magic ring (6)
            Rnd 2: inc x 6 (12)
            Rnds 3-4: dc in each st around (12)
            Change to red.
            Rnd 5: (2 dc, dec) x 3 (9)
            Fasten off.

            Rnd 1: 6 dc in magic ring (6)
            """;

    @Test
    void everyTechniqueComesFirstAtOnePlace() {
        String all = uses(BALL).all().stream()
                .map(use -> use.place().order() + " " + use.technique().id())
                .collect(Collectors.joining("\n"));
        assertEquals("""
                1 holding-hook-and-yarn
                1 slip-knot
                1 chain
                1 double-crochet
                1 parts-of-a-stitch
                1 counting-stitches
                1 magic-ring
                2 stitch-marker
                2 spiral-rounds
                2 increase
                2 reading-a-line
                3 even-rounds
                3 right-and-wrong-side
                3 pulling-back
                5 colour-change
                6 decrease
                7 fastening-off""", all);
    }

    @Test
    void groundworkIsNotNewButTakesItsMinutes() {
        FirstUses uses = uses(BALL);
        assertEquals(
                List.of("double-crochet", "magic-ring"),
                uses.newAt(1).stream().map(Technique::id).toList());
        double all = uses.at(1).stream()
                .mapToDouble(use -> use.technique().minutes())
                .sum();
        double fresh = uses.newAt(1).stream().mapToDouble(Technique::minutes).sum();
        assertEquals(all, uses.teachingMinutes(1));
        assertEquals(true, all > fresh);
    }

    @Test
    void aColourToBeginWithIsNoChange() {
        assertEquals(5, uses(BALL).of("colour-change").orElseThrow().order());
    }

    @Test
    void saysWhatAPatternSkips() {
        FirstUses uses = uses("Rnd 1: 6 dc in magic ring (6)\nRnd 2: inc x 6 (12)\nRnd 3: (dc, inv dec) x 4 (8)");
        assertEquals(
                List.of("invisible-decrease: decrease"),
                uses.missing().stream()
                        .filter(missing -> missing.before().stream()
                                .anyMatch(one -> one.id().equals("decrease")))
                        .map(missing -> missing.use().technique().id() + ": decrease")
                        .toList());
    }

    @Test
    void nothingIsMissingInAPatternThatGoesStepByStep() {
        assertEquals(List.of(), uses(BALL).missing());
    }

    @Test
    void joinedRoundsAreNotTakenForASpiral() {
        FirstUses uses = uses("Rnd 1: 6 dc in magic ring, join with ss (6)\nRnd 2: ch 1, inc x 6, join with ss (12)");
        assertEquals(Optional.empty(), uses.of("spiral-rounds"));
        assertEquals(0, uses.of("joined-rounds").orElseThrow().order());
        assertEquals(0, uses.of("slip-stitch").orElseThrow().order());
    }
}
