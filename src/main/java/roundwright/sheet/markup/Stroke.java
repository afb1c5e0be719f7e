package roundwright.sheet.markup;

import java.awt.Color;
import java.awt.Shape;

/**
 * A line or a filled outline.
 *
 * @param width of the pen in points; 0 where the shape is filled
 */
public record Stroke(Shape shape, Color color, double width) {
    public boolean filled() {
        return width == 0;
    }
}
