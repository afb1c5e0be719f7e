package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundwright.notation.Terms;

/** What a chain at the beginning of a piece tells of the first round or row. */
class FoundationTest {
    private static List<Line> lines(String text) {
        return PatternReader.readBare(Optional.of(Terms.US), text).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ch 72, join with sl st to form a ring.|Rnd 1: ch 1, sc in each ch around, join.|72",
                "Chain 60 and join in a ring, being careful not to twist.|Round 1: ch 1, *8 dc, dc2tog* repeat around|54",
                "Foundation: Ch 40, join|Rnd 1: hdc around|40",
                "Ch 15.|Row 1: sc in 2nd ch from hook and in each ch across|14",
                "Ch 15, turn.|Row 1: hdc in 2nd ch from hook, hdc in each ch to last ch, 2 hdc in last ch|15",
                "A gift for Ilka|Row 1: Ch 31, sc in 2nd ch from hook and in each ch across|30",
            })
    void aFirstRoundWithoutACountHasThatOfItsChain(String chain, String first, int count) {
        List<Line> read = lines(chain + "\n" + first + "\nRnd 2: sc around");
        assertEquals(OptionalInt.of(count), read.get(1).makes(), first);
        assertEquals(OptionalInt.of(count), read.get(2).makes());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ch 72, join with sl st to form a ring.|Rnd 1: ch 1, sc in each ch around, join (70)|(72)",
                "Ch 72, join with sl st to form a ring.|Rnd 1: ch 1, *10 sc, sc2tog* 5 times, join|6 times",
                "Ch 15|Row 1: sc in 2nd ch from hook and in each ch across (15)|(14)",
            })
    void aFirstRoundThatDoesNotFitItsChainIsToldWithAMend(String chain, String first, String mended) {
        Line line = lines(chain + "\n" + first).get(1);
        assertEquals(Verdict.DOES_NOT_ADD_UP, line.verdict());
        assertTrue(line.problems().get(0).suggestions().get(0).contains(mended));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ch 5, join to form a ring.|Rnd 1: ch 3, 11 dc in ring, join (12)",
                "Ch 6, join.|Rnd 1: 12 sc (12)",
                "Ch 15 (17, 19).|Row 1: sc in 2nd ch from hook and in each ch across (16)",
                "Ch 15 + 1|Row 1: sc in 2nd ch from hook and in each ch across (15)",
                "Ch 15|Row 1: dc in 4th ch from hook and in each ch across (13)",
                "Ch 15|Row 1: dc in 4th ch from hook and in each ch across (12)",
            })
    void nothingIsSaidWhereTheChainDoesNotTell(String chain, String first) {
        assertEquals(Verdict.ADDS_UP, lines(chain + "\n" + first).get(1).verdict(), first);
    }

    @Test
    void theWordsSayHowManyChainsAreWorkedInto() {
        Line ring = lines("Ch 72, join with sl st to form a ring.\nRnd 1: ch 1, sc in each ch around, join.")
                .get(1);
        assertTrue(ring.words().contains("one single crochet in each of the next 72 chains"), ring.words());
        assertTrue(ring.words().startsWith("Begin with one chain"), ring.words());
    }

    @Test
    void aGroupIsToldAsOneHoweverManyStitchesItMakes() {
        Line shells = lines("Rnd 1: 6 sc in MR (6)\nRnd 2: shell (3 dc) in each st around")
                .get(1);
        assertEquals(OptionalInt.of(18), shells.makes());
        assertTrue(shells.words().startsWith("One shell in every stitch"), shells.words());
    }

    @Test
    void aChainAfterRoundsIsNoFoundation() {
        List<Line> read = lines("Rnd 1: 6 sc in ring (6)\nCh 20, fasten off.\nRnd 2: inc around");
        assertEquals(OptionalInt.of(12), read.get(2).makes());
    }
}
