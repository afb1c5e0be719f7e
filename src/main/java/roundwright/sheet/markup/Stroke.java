package roundwright.sheet.markup;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
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

    void draw(Graphics2D graphics) {
        graphics.setColor(color);
        if (filled()) {
            graphics.fill(shape);
        } else {
            graphics.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(shape);
        }
    }
}
