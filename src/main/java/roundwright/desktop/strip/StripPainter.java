package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Map;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Paints the piece: its columns, the names of its parts, the students on it, and the column that is chosen. */
final class StripPainter {
    private static final double ROUNDNESS = 3;
    private static final double DOT = 7;
    private static final int MOST_ROWS = 4;
    private static final double LEAST_DOT = 4.5;

    private final Graphics2D graphics;
    private final StripGeometry geometry;
    private final double[] edges;
    private final StripPiece piece;

    StripPainter(Graphics2D graphics, StripGeometry geometry) {
        this.graphics = graphics;
        this.geometry = geometry;
        this.edges = geometry.edges();
        this.piece = geometry.piece();
    }

    void columns() {
        double round = geometry.columnWidth() > Space.points(6) ? Space.points(ROUNDNESS * 2) : 0;
        for (int i = 0; i < piece.columns().size(); i++) {
            Rectangle2D body = geometry.column(edges, i);
            graphics.setColor(piece.columns().get(i).wool().color());
            if (piece.columns().get(i).count().isEmpty()) {
                unknown(body);
            } else {
                graphics.fill(rounded(body, round));
            }
        }
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
                partName(from, i - 1, geometry.column(edges, chosen));
                from = i;
            }
        }
    }

    private void partName(int from, int to, Rectangle2D chosen) {
        double left = geometry.column(edges, from).getMinX();
        double right = geometry.column(edges, to).getMaxX();
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

    void students(Map<Integer, List<String>> students) {
        students.forEach((column, names) -> students(column, names.size()));
    }

    private void students(int column, int count) {
        Rectangle2D body = geometry.column(edges, column);
        double dot = Math.min(Space.points(DOT), Math.max(Space.points(LEAST_DOT), body.getWidth()));
        double step = dot + Space.points(1.5);
        int across = Math.max(1, (int) ((body.getWidth() + Space.points(3)) / step));
        int rows = Math.max(1, Math.min(MOST_ROWS, (int) (body.getHeight() / step)));
        double bottom = body.getMaxY();
        if (count > across * rows) {
            crowd(body, bottom, count);
            return;
        }
        for (int i = 0; i < count; i++) {
            int row = i / across;
            int inRow = Math.min(across, count - row * across);
            double x = body.getCenterX() - (inRow * step - Space.points(1.5)) / 2 + (i % across) * step;
            dot(x, bottom - Space.points(3) - dot - row * step, dot);
        }
    }

    private void dot(double x, double y, double side) {
        Ellipse2D dot = new Ellipse2D.Double(x, y, side, side);
        graphics.setColor(Tone.SURFACE.color());
        graphics.fill(dot);
        graphics.setColor(Tone.INK.color());
        graphics.setStroke(new BasicStroke(Space.points(1.6)));
        graphics.draw(dot);
    }

    private void crowd(Rectangle2D body, double bottom, int count) {
        String text = String.valueOf(count);
        graphics.setFont(Type.SMALL_STRONG.font());
        double width = graphics.getFontMetrics().stringWidth(text) + Space.points(10);
        double height = Space.points(17);
        RoundRectangle2D pill = new RoundRectangle2D.Double(
                body.getCenterX() - width / 2, bottom - height - Space.points(2), width, height, height, height);
        graphics.setColor(Tone.SURFACE.color());
        graphics.fill(pill);
        graphics.setColor(Tone.INK.color());
        graphics.setStroke(new BasicStroke(Space.points(1.2)));
        graphics.draw(pill);
        graphics.drawString(
                text, (float) (pill.getX() + Space.points(5)), (float) (pill.getMaxY() - Space.points(4.5)));
    }

    void outline(int column, Tone tone, double stroke) {
        Rectangle2D body = geometry.column(edges, column);
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
        Rectangle2D body = geometry.column(edges, column);
        double y = body.getMaxY() + Space.points(3);
        graphics.setStroke(new BasicStroke(Space.points(3), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.draw(new Line2D.Double(body.getMinX() + 2, y, body.getMaxX() - 2, y));
    }

    private static RoundRectangle2D rounded(Rectangle2D body, double round) {
        return new RoundRectangle2D.Double(body.getX(), body.getY(), body.getWidth(), body.getHeight(), round, round);
    }
}
