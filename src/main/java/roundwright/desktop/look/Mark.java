package roundwright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** The shapes that say how it stands, so that nothing is told by colour alone. */
public enum Mark {
    /** Too many stitches: a filled triangle upwards. */
    OVER(Tone.OVER),
    /** Too few: a filled triangle downwards. */
    UNDER(Tone.UNDER),
    /** As the pattern says: a tick. */
    RIGHT(Tone.MUTED),
    /** Pulled back: an arrow bent back. */
    PULLED_BACK(Tone.INK),
    /** Being worked: a half-filled ring. */
    UNFINISHED(Tone.INK),
    /** Not reported yet: a small dot. */
    NOT_YET(Tone.MUTED),
    /** What comes next: an arrow. */
    NEXT(Tone.PINE),
    /** To come later: an open ring. */
    LATER(Tone.MUTED),
    /** A technique is new here: a flag. */
    NEW(Tone.MARIGOLD),
    /** Something needs mending: a triangle with a stroke in it. */
    TROUBLE(Tone.MARIGOLD);

    private final Tone tone;

    Mark(Tone tone) {
        this.tone = tone;
    }

    public Tone tone() {
        return tone;
    }

    /** Paints the mark in its tone into a square of a side in pixels whose upper left corner is given. */
    public void paint(Graphics2D graphics, double x, double y, double side) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(tone.color());
        smooth.translate(x, y);
        smooth.scale(side / 10, side / 10);
        smooth.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (this) {
            case OVER -> smooth.fill(path(0, 9, 10, 9, 5, 0.5));
            case UNDER -> smooth.fill(path(0, 1, 10, 1, 5, 9.5));
            case RIGHT -> smooth.draw(open(1.5, 5.5, 4, 8, 8.5, 2.5));
            case PULLED_BACK -> paintBentArrow(smooth);
            case UNFINISHED -> paintHalfRing(smooth);
            case NOT_YET -> smooth.fill(new Ellipse2D.Double(4, 4.2, 2, 2));
            case NEXT -> paintArrow(smooth);
            case LATER -> smooth.draw(new Ellipse2D.Double(1.4, 1.4, 7.2, 7.2));
            case NEW -> smooth.fill(path(0.5, 0.5, 9.5, 0.5, 7, 4, 9.5, 7.5, 0.5, 7.5));
            case TROUBLE -> paintTrouble(smooth);
        }
        smooth.dispose();
    }

    private static void paintBentArrow(Graphics2D graphics) {
        graphics.draw(open(3.5, 1, 1, 3.5, 3.5, 6));
        graphics.draw(open(1, 3.5, 6, 3.5));
        graphics.draw(new Arc2D.Double(3.4, 3.5, 5.6, 5.2, -90, 180, Arc2D.OPEN));
        graphics.draw(open(6, 8.7, 3.5, 8.7));
    }

    private static void paintHalfRing(Graphics2D graphics) {
        graphics.draw(new Ellipse2D.Double(1.2, 1.2, 7.6, 7.6));
        graphics.fill(new Arc2D.Double(1.2, 1.2, 7.6, 7.6, 90, 180, Arc2D.PIE));
    }

    private static void paintArrow(Graphics2D graphics) {
        graphics.draw(open(0.8, 5, 8.5, 5));
        graphics.fill(path(5.2, 1.2, 9.6, 5, 5.2, 8.8));
    }

    private static void paintTrouble(Graphics2D graphics) {
        graphics.draw(path(5, 0.8, 9.4, 9, 0.6, 9));
        graphics.draw(open(5, 3.8, 5, 5.8));
        graphics.fill(new Ellipse2D.Double(4.3, 6.8, 1.4, 1.4));
    }

    private static Path2D path(double... points) {
        Path2D path = open(points);
        path.closePath();
        return path;
    }

    private static Path2D open(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        return path;
    }
}
