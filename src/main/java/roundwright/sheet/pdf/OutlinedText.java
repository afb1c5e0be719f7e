package roundwright.sheet.pdf;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.Stroke;

/**
 * Writing that the fonts of the sheets lack, Chinese or Hindi names among them, drawn as outlines with a font of the machine. The
 * words are kept as what the drawing says. Where the machine has no such font either, the text stays text and prints as boxes.
 */
final class OutlinedText {
    /** Height of the drawing, and its depth below the line, in sizes of the type. */
    static final double HEIGHT = 1.25;

    static final double DEPTH = 0.3;

    private static final double SIZE = 100;
    private static final Color INK = new Color(0x222222);

    /** Latin, Greek, Cyrillic, Hebrew and Arabic are before it: the fonts of the sheets have them. */
    private static final int FIRST_DOUBTFUL = 0x0700;

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    /** A stretch of a text, with its drawing where it needs one. */
    record Run(String words, Optional<Picture> drawing) {}

    private OutlinedText() {}

    /** The text in stretches that are to be drawn or set. */
    static List<Run> runs(String words) {
        return words.codePoints().allMatch(OutlinedText::known)
                ? List.of(new Run(words, Optional.empty()))
                : split(words, new Font(Font.DIALOG, Font.PLAIN, (int) SIZE));
    }

    static List<Run> split(String words, Font machine) {
        List<Run> runs = new ArrayList<>();
        int at = 0;
        while (at < words.length()) {
            boolean known = known(words.codePointAt(at));
            int end = at;
            while (end < words.length() && known == known(words.codePointAt(end))) {
                end += Character.charCount(words.codePointAt(end));
            }
            String run = words.substring(at, end);
            runs.add(new Run(run, known ? Optional.empty() : drawing(run, machine)));
            at = end;
        }
        return runs;
    }

    private static boolean known(int character) {
        return character < FIRST_DOUBTFUL || SheetsFont.FONT.canDisplay(character);
    }

    private static Optional<Picture> drawing(String run, Font machine) {
        if (machine.canDisplayUpTo(run) >= 0) {
            return Optional.empty();
        }
        TextLayout layout = new TextLayout(run, machine.deriveFont((float) SIZE), CONTEXT);
        AffineTransform down = AffineTransform.getTranslateInstance(0, SIZE * (HEIGHT - DEPTH));
        Shape outline = layout.getOutline(down);
        // pictures in colour have no outline
        return outline.getBounds2D().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Picture(layout.getAdvance(), SIZE * HEIGHT, List.of(new Stroke(outline, INK, 0)), run));
    }

    /** How wide a drawing is, in sizes of the type. */
    static double width(Picture drawing) {
        return drawing.width() / SIZE;
    }

    /** The font that steps in for the others, read when a doubtful character first turns up. */
    private static final class SheetsFont {
        static final Font FONT = read();

        private static Font read() {
            try {
                return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(PdfFonts.stepsIn()));
            } catch (IOException | FontFormatException failure) {
                throw new IllegalStateException("the sheets' own font cannot be read", failure);
            }
        }
    }
}
