package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/** What there is to do, read out of patterns. */
class PlanItemsTest {
    private static final String LIGHTHOUSE = """
            # Tower
            Rnd 1: 8 dc in magic ring. (8)
            Rnd 2: inc x 8 (16)
            Rnds 3-5: dc in each st around. (16)
            Change to red.
            Rnd 6: (2 dc, dec) x 4 (12)
            Stuff the tower firmly.
            Rnd 7: dec x 6 (6)
            Fasten off and draw the opening closed.
            # Lantern
            Rnd 1: 6 dc in magic ring. (6)
            Rnd 2: inc x 6 (12)
            Fasten off, leaving a long tail.
            Sew the lantern on the tower.
            """;

    private static PlanItems items(String text, double pace) {
        Pattern pattern = PatternReader.readBare(Optional.of(Terms.UK), text);
        return PlanItems.of(FirstUses.of(pattern, Techniques.catalogue()), pace);
    }

    private static List<PlanItem> lighthouse() {
        return items(LIGHTHOUSE, 8).items();
    }

    @Test
    void roundsAndInstructionsThatTakeTimeAreItems() {
        assertEquals(
                "Tower 1-6, “Stuff the tower firmly”, Tower 7, “Fasten off and draw the opening closed”, Lantern 1-2, "
                        + "“Sew the lantern on the tower”",
                ItemWords.names(lighthouse()));
    }

    @Test
    void minutesAreStitchesCountingTeachingAndTasks() {
        List<PlanItem> items = lighthouse();
        assertEquals(1, items.get(0).working(), 1e-9);
        assertEquals(2, items.get(1).working(), 1e-9);
        assertEquals(0.75, items.get(1).counting());
        PlanItem stuff = items.get(6);
        assertEquals(Optional.of("Stuff the tower firmly."), stuff.instruction());
        assertEquals(5, stuff.working());
        assertEquals(0, stuff.counting());
        assertEquals(1.5, items.get(0).atPace(8, 16).working() + 1, 1e-9);
        assertEquals(5, stuff.atPace(8, 16).working(), 1e-9);
    }

    @Test
    void techniquesAreNewWhereTheyComeFirst() {
        List<PlanItem> items = lighthouse();
        assertEquals(List.of("double-crochet", "magic-ring"), items.get(0).introduces());
        assertEquals(List.of("increase"), items.get(1).introduces());
        assertTrue(items.get(0).teaching() >= 24, "the ring, the stitch and their groundwork");
        assertEquals(List.of(), items.get(9).introduces());
        assertFalse(items.get(0).homework());
    }

    @Test
    void anInstructionThatTakesNoTimeIsTaughtWithTheNextRound() {
        assertEquals(List.of("colour-change", "decrease"), lighthouse().get(5).introduces());
    }

    @Test
    void anInstructionAtTheEndIsTaughtWithTheLastItem() {
        List<PlanItem> items =
                items("Rnd 1: 6 dc in magic ring. (6)\nChange to red.", 8).items();
        assertEquals(1, items.size());
        assertTrue(items.get(0).introduces().contains("colour-change"), items.toString());
    }

    @Test
    void placesOfStoppingAreMarked() {
        List<PlanItem> items = lighthouse();
        assertEquals(1, items.stream().filter(PlanItem::prepares).count());
        assertTrue(items.get(6).prepares());
        assertEquals(
                List.of(8, 11),
                java.util.stream.IntStream.range(0, items.size())
                        .filter(place -> items.get(place).endsPart())
                        .boxed()
                        .toList());
        assertEquals(items.get(2).range(), items.get(4).range());
        assertEquals(10, items.stream().mapToInt(PlanItem::range).distinct().count());
        assertTrue(items.get(1).shaping());
        assertFalse(items.get(3).shaping());
    }

    @Test
    void whatIsTaughtJoinedStuffedOrClosedIsNoHomework() {
        List<PlanItem> items = lighthouse();
        assertFalse(items.get(6).homework());
        assertFalse(items.get(8).homework());
        assertTrue(items.get(9).homework());
        assertTrue(items.get(7).homework());
    }

    @Test
    void aRoundThatCannotBeReadIsPlannedAroundAndSaid() {
        PlanItems read = items("""
                Rnd 1: 6 dc in magic ring. (6)
                Rnd 2: inc x 6 (12)
                Rnd 3: dc wibble the frob into each zorp (18)
                Rnd 4: dc wibble the frob into each zorp
                """, 6);
        assertEquals(4, read.items().size());
        assertEquals(18, read.items().get(2).stitches());
        assertEquals(18, read.items().get(3).stitches());
        assertEquals(
                2,
                read.remarks().stream()
                        .filter(remark -> remark.text().contains("wibble"))
                        .count(),
                read.toString());
    }

    @Test
    void whatThePatternSkipsIsToBePractisedBeforehand() {
        PlanItems read = items("Rnd 1: 6 dc in magic ring. (6)\nRnd 2: inc x 6 (12)\nRnd 3: inv dec x 6 (6)", 6);
        assertTrue(
                read.remarks().stream()
                        .anyMatch(remark -> remark.text().contains("Part 1 3")
                                && remark.text().contains("decrease")),
                read.remarks().toString());
    }

    @Test
    void nothingToDoIsNoItems() {
        assertEquals(List.of(), items("", 6).items());
        assertEquals(List.of(), items("Use a 4 mm hook.", 6).items());
        assertEquals(OptionalInt.empty(), items(LIGHTHOUSE, 6).items().get(6).round());
    }
}
