package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** An edge between two lessons under the pointer, taken hold of and drawn along. */
final class EdgeDrag {
    private static final double NEAR = 7;
    private static final double ABOVE = 8;

    private LessonEdges edges = LessonEdges.FIXED;
    private Optional<StripPiece.Bracket> held = Optional.empty();
    private int column;

    void use(LessonEdges newEdges) {
        edges = newEdges;
    }

    boolean held() {
        return held.isPresent();
    }

    /** The lesson whose beginning lies at a point, if there is one before it. */
    Optional<StripPiece.Bracket> at(StripGeometry geometry, StripRooms rooms, double x, double y) {
        if (!edges.movable() || y < rooms.bracket() - Space.points(ABOVE)) {
            return Optional.empty();
        }
        double[] lefts = geometry.edges();
        List<StripPiece.Bracket> brackets = geometry.piece().brackets();
        return brackets.stream()
                .skip(1)
                .filter(bracket -> Math.abs(lefts[bracket.from()] - x) <= Space.points(NEAR))
                .findFirst();
    }

    void hold(StripPiece.Bracket bracket) {
        held = Optional.of(bracket);
        column = bracket.from();
    }

    /** Draws the held edge to the nearest edge of a column. */
    void drawTo(StripGeometry geometry, double x) {
        double[] lefts = geometry.edges();
        int nearest = 1;
        for (int i = 1; i < lefts.length - 1; i++) {
            nearest = Math.abs(lefts[i] - x) < Math.abs(lefts[nearest] - x) ? i : nearest;
        }
        column = nearest;
    }

    /** Lets go; the lesson begins where its edge has been drawn to. */
    void letGo() {
        Optional<StripPiece.Bracket> last = held;
        held = Optional.empty();
        last.filter(bracket -> bracket.from() != column).ifPresent(bracket -> edges.move(bracket.lesson(), column));
    }

    void giveUp() {
        held = Optional.empty();
    }

    /** Paints the edge being drawn, and what it would come to. */
    void paint(Graphics2D graphics, StripGeometry geometry, StripRooms rooms, int width) {
        held.ifPresent(bracket -> {
            double x = geometry.edges()[column];
            graphics.setColor(Tone.PINE.color());
            graphics.setStroke(new BasicStroke(Space.points(2.5)));
            graphics.draw(new Line2D.Double(x, rooms.top(), x, rooms.bracket() + Space.points(8)));
            words(graphics, edges.told(bracket.lesson(), column), x, rooms, width);
        });
    }

    private static void words(Graphics2D graphics, String told, double x, StripRooms rooms, int width) {
        graphics.setFont(Type.SMALL_STRONG.font());
        int wide = graphics.getFontMetrics().stringWidth(told) + Space.points(20);
        int high = Space.points(26);
        int left = (int) Math.max(Space.points(6), Math.min(x - wide / 2.0, width - wide - Space.points(6)));
        int top = rooms.bracket() - Space.points(34);
        int arc = Space.points(14);
        graphics.setColor(Tone.SURFACE.color());
        graphics.fillRoundRect(left, top, wide, high, arc, arc);
        graphics.setColor(Tone.PINE.color());
        graphics.setStroke(new BasicStroke(1));
        graphics.drawRoundRect(left, top, wide, high, arc, arc);
        graphics.setColor(Tone.INK.color());
        graphics.drawString(told, left + Space.points(10), top + Space.points(18));
    }
}
