package roundwright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.RoundRectangle2D;

/**
 * A large rounded rectangle in whole pixels. Only its corners are drawn smoothly, since its straight sides need no smoothing and most of
 * the time would go into them.
 *
 * @param width of the whole, from the left edge of the component
 * @param height of the whole, from its top
 * @param arc radius of a corner
 */
public record Rounded(int width, int height, int arc) {
    public void fill(Graphics2D smooth) {
        square(smooth, 0, arc, width, height - 2 * arc);
        square(smooth, arc, 0, width - 2 * arc, arc);
        square(smooth, arc, height - arc, width - 2 * arc, arc);
        RoundRectangle2D whole = new RoundRectangle2D.Double(0, 0, width, height, 2.0 * arc, 2.0 * arc);
        inCorners(smooth, () -> smooth.fill(whole));
    }

    /** Draws its edge, so many pixels wide, inside it. */
    public void draw(Graphics2D smooth, int line) {
        square(smooth, arc, 0, width - 2 * arc, line);
        square(smooth, arc, height - line, width - 2 * arc, line);
        square(smooth, 0, arc, line, height - 2 * arc);
        square(smooth, width - line, arc, line, height - 2 * arc);
        double middle = line / 2.0;
        RoundRectangle2D edge = new RoundRectangle2D.Double(
                middle, middle, (double) width - line, (double) height - line, 2.0 * arc - line, 2.0 * arc - line);
        smooth.setStroke(new BasicStroke(line));
        inCorners(smooth, () -> smooth.draw(edge));
    }

    private void square(Graphics2D smooth, int left, int top, int wide, int high) {
        smooth.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        smooth.fillRect(left, top, wide, high);
        smooth.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }

    private void inCorners(Graphics2D smooth, Runnable draws) {
        Shape clip = smooth.getClip();
        for (int left : new int[] {0, width - arc}) {
            for (int top : new int[] {0, height - arc}) {
                if (smooth.hitClip(left, top, arc, arc)) {
                    smooth.clipRect(left, top, arc, arc);
                    draws.run();
                    smooth.setClip(clip);
                }
            }
        }
    }
}
