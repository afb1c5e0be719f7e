package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Paints the brackets below the piece: a lesson each, its number, its name where there is room. */
final class LessonPainter {
    private final Graphics2D graphics;
    private final StripGeometry geometry;
    private final StripRooms rooms;

    LessonPainter(Graphics2D graphics, StripGeometry geometry, StripRooms rooms) {
        this.graphics = graphics;
        this.geometry = geometry;
        this.rooms = rooms;
    }

    void paint(StripPiece.Bracket bracket, boolean current) {
        double left = geometry.column(bracket.from()).getMinX() + Space.points(0.5);
        double right = geometry.column(bracket.to()).getMaxX() - Space.points(0.5);
        Path2D path = new Path2D.Double();
        double tick = Space.points(5);
        path.moveTo(left, rooms.bracket());
        path.lineTo(left, rooms.bracket() + tick);
        path.lineTo(right, rooms.bracket() + tick);
        path.lineTo(right, rooms.bracket());
        graphics.setStroke(new BasicStroke(Space.points(current ? 2.2 : 1.2)));
        graphics.setColor((current ? Tone.PINE : Tone.MUTED).color());
        graphics.draw(path);
        words(bracket, current, left, right);
    }

    private void words(StripPiece.Bracket bracket, boolean current, double left, double right) {
        graphics.setFont((current ? Type.SMALL_STRONG : Type.SECOND).font());
        graphics.setColor((current ? Tone.PINE : Tone.INK).color());
        centred(String.valueOf(bracket.lesson()), left, right, rooms.numberBaseline());
        if (rooms.lessonNames()) {
            graphics.setFont(Type.SMALL.font());
            graphics.setColor(Tone.MUTED.color());
            String name = Cut.to(bracket.name(), graphics.getFontMetrics(), right - left - Space.points(4));
            centred(name, left, right, rooms.nameBaseline());
        }
    }

    private void centred(String text, double left, double right, double baseline) {
        double width = graphics.getFontMetrics().stringWidth(text);
        if (width <= right - left + Space.points(8)) {
            graphics.drawString(text, (float) ((left + right - width) / 2), (float) baseline);
        }
    }
}
