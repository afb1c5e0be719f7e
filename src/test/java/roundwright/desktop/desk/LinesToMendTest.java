package roundwright.desktop.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

class LinesToMendTest {
    private static Pattern read(String text) {
        return PatternReader.readBare(Optional.empty(), text);
    }

    @Test
    void aPatternThatAddsUpHasNone() {
        assertEquals(Optional.empty(), LinesToMend.told(read("Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\n")));
    }

    @Test
    void theFirstIsNamedWithWhatIsTheMatterAndAllAreCounted() {
        String told = LinesToMend.told(
                        read("Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (13)\nRnd 3: wobble until it lies (20)\n"))
                .orElseThrow();
        assertTrue(told.startsWith("2 lines need a look, first “Rnd 2: inc x 6 (13)”"), told);
        assertTrue(told.contains("makes 12 stitches, but the line states 13"), told);
    }
}
