package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.awt.geom.RoundRectangle2D;
import java.util.EnumMap;
import java.util.Map;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Paints the piece: its columns, the names of its parts, the students on it, and the column that is chosen. */
final class StripPainter {
    private static final double ROUNDNESS = 3;

    private final Graphics2D graphics;
    private final StripGeometry geometry;
    private final StripPiece piece;

    StripPainter(Graphics2D graphics, StripGeometry geometry) {
        this.graphics = graphics;
        this.geometry = geometry;
        this.piece = geometry.piece();
    }

    void columns() {
        double round = geometry.columnWidth() > Space.points(6) ? Space.points(ROUNDNESS * 2) : 0;
        Map<Wool, Path2D> bodies = new EnumMap<>(Wool.class);
        for (int i = 0; i < piece.columns().size(); i++) {
            StripPiece.Column column = piece.columns().get(i);
            if (column.count().isEmpty()) {
                unknown(geometry.column(i));
            } else {
                bodies.computeIfAbsent(column.wool(), absent -> new Path2D.Double())
                        .append(rounded(geometry.column(i), round), false);
            }
        }
        bodies.forEach((wool, all) -> {
            graphics.setColor(wool.color());
            graphics.fill(all);
        });
        outlines();
    }

    /** Wool may be as pale as the paper: a line round each part tells its shape. */
    private void outlines() {
        graphics.setColor(Tone.EDGE.color());
        graphics.setStroke(new BasicStroke(Space.points(1)));
        int from = 0;
        for (int i = 1; i <= piece.columns().size(); i++) {
            if (i == piece.columns().size() || piece.beginsPart(i)) {
                graphics.draw(outline(from, i - 1));
                from = i;
            }
        }
    }

    private Path2D outline(int from, int to) {
        Path2D path = new Path2D.Double();
        path.moveTo(geometry.column(from).getMinX(), geometry.column(from).getMaxY());
        for (int i = from; i <= to; i++) {
            Rectangle2D body = geometry.column(i);
            path.lineTo(body.getMinX(), body.getMinY());
            path.lineTo(body.getMaxX(), body.getMinY());
        }
        for (int i = to; i >= from; i--) {
            Rectangle2D body = geometry.column(i);
            path.lineTo(body.getMaxX(), body.getMaxY());
            path.lineTo(body.getMinX(), body.getMaxY());
        }
        path.closePath();
        return path;
    }

    /** A round whose count is not known: an open outline at half height. */
    private void unknown(Rectangle2D body) {
        double height = geometry.bodyHeight() / 2;
        double top = geometry.bodyTop() + (geometry.bodyHeight() - height) / 2;
        graphics.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, new float[] {3, 3}, 0));
        graphics.setColor(Tone.MUTED.color());
        graphics.draw(new Rectangle2D.Double(body.getX(), top, Math.max(1, body.getWidth() - 1), height));
        graphics.setStroke(new BasicStroke(1));
    }

    /** Names the parts in their middle, beside the chosen column where that stands in the middle. */
    void partNames(int chosen) {
        int from = 0;
        for (int i = 1; i <= piece.columns().size(); i++) {
            if (i == piece.columns().size() || piece.beginsPart(i)) {
                partName(from, i - 1, geometry.column(chosen));
                from = i;
            }
        }
    }

    private void partName(int from, int to, Rectangle2D chosen) {
        double left = geometry.column(from).getMinX();
        double right = geometry.column(to).getMaxX();
        String name = piece.columns().get(from).place().part();
        graphics.setFont(Type.SMALL_STRONG.font());
        double width = graphics.getFontMetrics().stringWidth(name);
        double pad = Space.points(7);
        if (width + 2 * pad > right - left + Space.points(10)) {
            return;
        }
        double height = Space.points(20);
        double x = beside(chosen, left, right, width, pad + Space.points(4));
        double y = geometry.bodyTop() + (geometry.bodyHeight() - height) / 2;
        Color surface = Tone.SURFACE.color();
        graphics.setColor(new Color(surface.getRed(), surface.getGreen(), surface.getBlue(), 225));
        graphics.fill(new RoundRectangle2D.Double(x - pad, y, width + 2 * pad, height, height, height));
        graphics.setColor(Tone.INK.color());
        graphics.drawString(name, (float) x, (float) (y + height * 0.71));
    }

    /** In the middle, or just left or right of the chosen column where that stands there and the part goes on. */
    private static double beside(Rectangle2D chosen, double left, double right, double width, double apart) {
        double middle = (left + right - width) / 2;
        double before = chosen.getMinX() - width - apart;
        double after = chosen.getMaxX() + apart;
        boolean free = middle + width + apart < chosen.getMinX() || middle - apart > chosen.getMaxX();
        if (free) {
            return middle;
        }
        return before >= left ? before : after + width <= right ? after : middle;
    }

    void outline(int column, Tone tone, double stroke) {
        Rectangle2D body = geometry.column(column);
        double out = Space.points(4);
        double width = Math.max(body.getWidth() + out, Space.points(8));
        RoundRectangle2D edge = new RoundRectangle2D.Double(
                body.getCenterX() - width / 2,
                body.getY() - out,
                width,
                body.getHeight() + 2 * out,
                Space.points(8),
                Space.points(8));
        graphics.setStroke(new BasicStroke(Space.points(stroke)));
        graphics.setColor(tone.color());
        graphics.draw(edge);
    }

    /** A short thick rule under the columns where many go wrong. */
    void trouble(int column) {
        Rectangle2D body = geometry.column(column);
        double y = body.getMaxY() + Space.points(3);
        graphics.setStroke(new BasicStroke(Space.points(3), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.draw(new Line2D.Double(body.getMinX() + 2, y, body.getMaxX() - 2, y));
    }

    private static RectangularShape rounded(Rectangle2D body, double round) {
        if (round == 0) {
            return body;
        }
        return new RoundRectangle2D.Double(body.getX(), body.getY(), body.getWidth(), body.getHeight(), round, round);
    }
}
