package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;

/** A share of a whole as a bar. The number always stands beside it in words; the bar itself says nothing to a reader. */
public final class Bar extends Painted {
    private static final double HEIGHT = 8;

    private final Tone tone;
    private double share;

    /** A share of 0 (nothing) to 1 (the whole). */
    public Bar(double share, Tone tone) {
        this.share = share;
        this.tone = tone;
    }

    /** Another share. */
    public void setShare(double share) {
        this.share = share;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.of(10), Space.points(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        paint(smooth, 0, (getHeight() - Space.points(HEIGHT)) / 2.0, getWidth(), share, tone);
        smooth.dispose();
    }

    /** Paints a bar of the usual height at a place. */
    public static void paint(Graphics2D graphics, double x, double y, double width, double share, Tone tone) {
        double height = Space.points(HEIGHT);
        double filled = Math.max(share > 0 ? height : 0, width * Math.min(1, share));
        graphics.setColor(Tone.TRACK.color());
        graphics.fill(new RoundRectangle2D.Double(x, y, width, height, height, height));
        graphics.setColor(tone.color());
        graphics.fill(new RoundRectangle2D.Double(x, y, filled, height, height, height));
    }
}
