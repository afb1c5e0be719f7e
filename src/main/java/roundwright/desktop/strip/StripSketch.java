package roundwright.desktop.strip;

import java.awt.Graphics2D;

/** The piece alone, without lessons, flags or students: a picture of a course. */
public final class StripSketch {
    private StripSketch() {}

    /** Paints the piece into a rectangle of pixels. */
    public static void paint(Graphics2D graphics, StripPiece piece, double x, double y, double width, double height) {
        if (!piece.columns().isEmpty()) {
            new StripPainter(graphics, new StripGeometry(piece, x, width, y, height)).columns();
        }
    }
}
