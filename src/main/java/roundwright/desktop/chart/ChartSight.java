package roundwright.desktop.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;

/**
 * Which part of a drawing is seen in a frame, and how large. At a zoom of 1 the whole drawing stands in the middle.
 *
 * @param width of the drawing at a zoom of 1, in pixels, at most the frame's
 * @param height of the drawing at a zoom of 1, at most the frame's
 * @param frameWidth in pixels
 * @param frameHeight in pixels
 * @param zoom from 1 to {@link #MOST}
 * @param panX how far the drawing's middle is moved right of the frame's
 * @param panY how far it is moved down
 */
record ChartSight(
        double width, double height, double frameWidth, double frameHeight, double zoom, double panX, double panY) {
    static final double MOST = 8;
    static final ChartSight NOTHING = new ChartSight(1, 1, 1, 1, 1, 0, 0);

    /** The same zoom and place of another drawing, or in another frame. */
    ChartSight of(double newWidth, double newHeight, double newFrameWidth, double newFrameHeight) {
        return new ChartSight(newWidth, newHeight, newFrameWidth, newFrameHeight, zoom, panX, panY).kept();
    }

    ChartSight whole() {
        return new ChartSight(width, height, frameWidth, frameHeight, 1, 0, 0);
    }

    AffineTransform toFrame() {
        AffineTransform transform = AffineTransform.getTranslateInstance(frameWidth / 2 + panX, frameHeight / 2 + panY);
        transform.scale(zoom, zoom);
        transform.translate(-width / 2, -height / 2);
        return transform;
    }

    Point2D toDrawing(double x, double y) {
        try {
            return toFrame().inverseTransform(new Point2D.Double(x, y), null);
        } catch (NoninvertibleTransformException impossible) {
            throw new IllegalStateException("a zoom of " + zoom, impossible);
        }
    }

    /** So many times as large, with the point of the drawing that lies at a place of the frame staying there. */
    ChartSight zoomed(double times, double x, double y) {
        double now = Math.max(1, Math.min(MOST, zoom * times));
        double share = now / zoom;
        double acrossX = x - frameWidth / 2;
        double acrossY = y - frameHeight / 2;
        return new ChartSight(
                        width,
                        height,
                        frameWidth,
                        frameHeight,
                        now,
                        acrossX - (acrossX - panX) * share,
                        acrossY - (acrossY - panY) * share)
                .kept();
    }

    ChartSight moved(double right, double down) {
        return new ChartSight(width, height, frameWidth, frameHeight, zoom, panX + right, panY + down).kept();
    }

    /** Moved so that a point of the drawing lies in the frame with some room about it. */
    ChartSight showing(double x, double y, double room) {
        Point2D at = toFrame().transform(new Point2D.Double(x, y), null);
        return moved(into(at.getX(), room, frameWidth), into(at.getY(), room, frameHeight));
    }

    private static double into(double at, double room, double size) {
        double edge = Math.min(room, size / 2);
        return at < edge ? edge - at : at > size - edge ? size - edge - at : 0;
    }

    /** No further than to the drawing's edges. */
    private ChartSight kept() {
        double mostX = Math.max(0, (width * zoom - frameWidth) / 2);
        double mostY = Math.max(0, (height * zoom - frameHeight) / 2);
        return new ChartSight(
                width,
                height,
                frameWidth,
                frameHeight,
                zoom,
                Math.max(-mostX, Math.min(mostX, panX)),
                Math.max(-mostY, Math.min(mostY, panY)));
    }
}
