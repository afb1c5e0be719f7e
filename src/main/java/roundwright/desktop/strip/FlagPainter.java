package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Paints a flag above each column where a technique comes first, and its name where there is room for words. */
final class FlagPainter {
    private static final double FLAG = 10;

    private final Graphics2D graphics;
    private final StripGeometry geometry;
    private final StripRooms rooms;
    private final double right;
    private final double[] taken;

    FlagPainter(Graphics2D graphics, StripGeometry geometry, StripRooms rooms, double right) {
        this.graphics = graphics;
        this.geometry = geometry;
        this.rooms = rooms;
        this.right = right;
        this.taken = new double[Math.max(1, rooms.flagRows())];
        Arrays.fill(taken, Double.NEGATIVE_INFINITY);
    }

    void paint(Map<Integer, List<String>> flags) {
        TreeMap<Integer, List<String>> ordered = new TreeMap<>(flags);
        double[] edges = geometry.edges();
        ordered.forEach((column, names) -> {
            Integer next = ordered.higherKey(column);
            double room = next == null ? right : geometry.column(edges, next).getCenterX();
            flag(geometry.column(edges, column), names, room);
        });
    }

    private void flag(Rectangle2D body, List<String> names, double nextFlag) {
        double x = body.getCenterX() - Space.points(0.5);
        int row = freeRow(x);
        double top = rooms.flagTop(Math.max(0, row));
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.setStroke(new BasicStroke(Space.points(1.2)));
        graphics.draw(new Line2D.Double(x, top, x, body.getY() - Space.points(3)));
        Mark.NEW.paint(graphics, x - Space.points(0.5), top, Space.points(FLAG));
        if (row >= 0 && rooms.flagRows() > 0) {
            words(String.join(", ", names), x + Space.points(FLAG + 5), row, nextFlag);
        }
    }

    /** The first row whose words have ended before x; -1 where all still run on. */
    private int freeRow(double x) {
        for (int row = 0; row < taken.length; row++) {
            if (taken[row] + Space.points(6) <= x) {
                return row;
            }
        }
        return -1;
    }

    private void words(String text, double x, int row, double nextFlag) {
        graphics.setFont(Type.SMALL.font());
        FontMetrics metrics = graphics.getFontMetrics();
        boolean lastRow = row == taken.length - 1;
        double end = lastRow ? Math.min(right, Math.max(nextFlag - Space.points(4), x)) : right;
        String fitting = Cut.to(text, metrics, end - x);
        graphics.setColor(Tone.INK.color());
        graphics.drawString(fitting, (float) x, (float) rooms.flagBaseline(row));
        taken[row] = x + metrics.stringWidth(fitting);
    }
}
