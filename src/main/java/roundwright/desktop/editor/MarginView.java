package roundwright.desktop.editor;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import roundwright.desktop.look.Figures;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** The margin beside the text: the number of each line, and of a round the count that it comes to. */
final class MarginView extends Painted {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double NUMBERS = 36;
    private static final double COUNTS = 46;

    private final JTextArea text;
    private transient Map<Integer, MarginCount> counts = Map.of();

    MarginView(JTextArea text) {
        this.text = text;
        getAccessibleContext().setAccessibleName(WORDS.say("editor-margin"));
    }

    void show(List<MarginCount> found) {
        counts = found.stream().collect(Collectors.toMap(MarginCount::line, count -> count, (first, second) -> first));
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(NUMBERS + COUNTS), text.getHeight());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.SURFACE.color());
        Rectangle seen = graphics.getClipBounds();
        smooth.fill(seen);
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(getWidth() - 0.5, seen.y, getWidth() - 0.5, seen.getMaxY()));
        try {
            int first = text.getLineOfOffset(text.viewToModel2D(new java.awt.Point(0, seen.y)));
            for (int line = first; line < text.getLineCount(); line++) {
                Rectangle2D place = text.modelToView2D(text.getLineStartOffset(line));
                if (place == null || place.getY() > seen.getMaxY()) {
                    break;
                }
                paintLine(smooth, line, place);
            }
        } catch (BadLocationException between) {
            // the text has changed while it was painted: it is painted again at once
        }
        smooth.dispose();
    }

    private void paintLine(Graphics2D graphics, int line, Rectangle2D place) {
        Font font = Type.SMALL.font();
        double baseline = place.getY() + text.getFontMetrics(text.getFont()).getMaxAscent();
        graphics.setColor(Tone.MUTED.color());
        Figures.paintRight(graphics, String.valueOf(line + 1), font, Space.points(NUMBERS - 6), baseline);
        MarginCount count = counts.get(line);
        if (count != null) {
            double right = getWidth() - Space.points(8);
            graphics.setColor((count.wrong() ? Tone.OVER : Tone.PINE).color());
            Figures.paintRight(graphics, String.valueOf(count.count()), Type.SMALL_STRONG.font(), right, baseline);
            if (count.wrong()) {
                double side = Space.points(11);
                Mark.TROUBLE.paint(graphics, Space.points(NUMBERS - 1), place.getCenterY() - side / 2, side);
            }
        }
    }
}
