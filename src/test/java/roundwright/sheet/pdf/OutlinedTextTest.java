package roundwright.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.pdf.OutlinedText.Run;

class OutlinedTextTest {
    /** A font that has signs which the sheets' own lack, whatever fonts this machine has. */
    private static final Font OTHER = read("/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf");

    private static Font read(String path) {
        try (InputStream font = OutlinedTextTest.class.getResourceAsStream(path)) {
            return Font.createFont(Font.TRUETYPE_FONT, font);
        } catch (Exception failure) {
            throw new IllegalStateException(path, failure);
        }
    }

    private static String signOnlyInTheOther() throws Exception {
        Font own = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(PdfFonts.stepsIn()));
        return IntStream.range(0x0700, 0xFFFF)
                .filter(sign -> OTHER.canDisplay(sign) && !own.canDisplay(sign))
                .filter(sign -> !Character.isISOControl(sign) && !Character.isWhitespace(sign))
                .filter(sign -> !new java.awt.font.TextLayout(
                                Character.toString(sign),
                                OTHER.deriveFont(100f),
                                new java.awt.font.FontRenderContext(null, true, true))
                        .getOutline(null)
                        .getBounds2D()
                        .isEmpty())
                .mapToObj(Character::toString)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zoë Ångström", "Ωμέγα", "Жанна", "שרה כהן", "فاطمة", "½ × ▲▼ ✓ →", ""})
    void whatTheSheetsFontsHaveStaysText(String words) {
        assertEquals(List.of(new Run(words, Optional.empty())), OutlinedText.runs(words));
    }

    @Test
    void whatOnlyAnotherFontHasIsDrawnAndSaysItsWords() throws Exception {
        String sign = signOnlyInTheOther();
        List<Run> runs = OutlinedText.split("Ada " + sign + sign + " Lin", OTHER);
        assertEquals(
                List.of("Ada ", sign + sign, " Lin"),
                runs.stream().map(Run::words).toList());
        assertTrue(runs.get(0).drawing().isEmpty() && runs.get(2).drawing().isEmpty());
        Picture drawing = runs.get(1).drawing().orElseThrow();
        assertEquals(sign + sign, drawing.words());
        assertTrue(OutlinedText.width(drawing) > 0.5 && OutlinedText.width(drawing) < 6, "in sizes of the type");
        assertTrue(drawing.strokes().get(0).shape().getBounds2D().getMaxY() <= drawing.height());
    }

    @Test
    void whatNoFontHasStaysTextAndLosesNothing() {
        String words = "a\uE000\uDBFF\uDFFDb";
        List<Run> runs = OutlinedText.split(words, OTHER);
        assertEquals(words, String.join("", runs.stream().map(Run::words).toList()));
        assertTrue(runs.stream().allMatch(run -> run.drawing().isEmpty()));
    }
}
