package roundwright.desktop.messages;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.JTextComponent;
import javax.swing.text.LayeredHighlighter;
import javax.swing.text.Position;
import javax.swing.text.View;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.notation.Span;

/** Marks in a text what was read in it: a whole line under what is sure, a broken one under what somebody has to decide. */
final class MarkedText {
    private static final int MOST = 2_000;

    private final JTextArea area;

    MarkedText(JTextArea area) {
        this.area = area;
        // whoever types goes on typing: marks are of the text as it was read
        area.setHighlighter(new DefaultHighlighter());
    }

    void show(FoundCounts found) {
        area.getHighlighter().removeAllHighlights();
        if (!found.text().equals(area.getText())) {
            return;
        }
        found.counts().stream().limit(MOST).forEach(count -> {
            count.before().forEach(earlier -> mark(earlier.source(), true));
            mark(count.source(), count.way().sure());
        });
        found.undecided().stream().limit(MOST).forEach(passage -> mark(passage.source(), false));
    }

    private void mark(Span span, boolean sure) {
        try {
            area.getHighlighter().addHighlight(span.start(), span.end(), new Underline(sure));
        } catch (BadLocationException gone) {
            throw new IllegalStateException(gone);
        }
    }

    /** Paints behind the words, and a line under them. */
    private static final class Underline extends LayeredHighlighter.LayerPainter {
        private final boolean sure;

        Underline(boolean sure) {
            this.sure = sure;
        }

        @Override
        public void paint(Graphics graphics, int from, int to, Shape bounds, JTextComponent component) {
            // layers are painted line by line
        }

        @Override
        public Shape paintLayer(
                Graphics graphics, int from, int to, Shape bounds, JTextComponent component, View view) {
            try {
                Rectangle place = view.modelToView(from, Position.Bias.Forward, to, Position.Bias.Backward, bounds)
                        .getBounds();
                Graphics2D pen = Space.smooth(graphics);
                pen.setColor((sure ? Tone.WASH : Tone.MARIGOLD_WASH).color());
                pen.fill(place);
                line(pen, place, (sure ? Tone.PINE : Tone.MARIGOLD).color());
                pen.dispose();
                return place;
            } catch (BadLocationException gone) {
                return bounds;
            }
        }

        private void line(Graphics2D pen, Rectangle place, Color color) {
            float thick = Space.points(1.5);
            float dash = Space.points(3);
            pen.setColor(color);
            pen.setStroke(
                    sure
                            ? new BasicStroke(thick)
                            : new BasicStroke(
                                    thick,
                                    BasicStroke.CAP_BUTT,
                                    BasicStroke.JOIN_MITER,
                                    1,
                                    new float[] {dash, dash},
                                    0));
            int base = place.y + place.height - Math.round(thick / 2);
            pen.drawLine(place.x, base, place.x + place.width, base);
        }
    }
}
