package roundwright.sheet.markup;

import java.awt.Graphics2D;
import java.util.List;

/**
 * A drawing of a sheet with what it says in words, for those who hear the sheet.
 *
 * @param width in points
 * @param height in points
 * @param words what it shows
 */
public record Picture(double width, double height, List<Stroke> strokes, String words) implements Node {
    public Picture {
        strokes = List.copyOf(strokes);
    }

    /** Draws it, a point of the picture a point of the graphics. */
    public void draw(Graphics2D graphics) {
        strokes.forEach(stroke -> stroke.draw(graphics));
    }
}
