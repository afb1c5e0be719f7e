package roundwright.desktop.look;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/** A short word in a rounded edge, such as a new technique. */
public final class Chip extends Text {
    private static final double ARC = 12;

    public Chip(String text) {
        super(text, Type.SMALL_STRONG, Tone.MARIGOLD);
        setBorder(Space.pad(0.4, 1, 0.4, 1));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int arc = Space.points(ARC);
        smooth.setColor(getForeground());
        smooth.draw(new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1.0, getHeight() - 1.0, arc, arc));
        smooth.dispose();
        super.paintComponent(graphics);
    }
}
