package roundwright.pattern.chart;

import java.awt.Shape;

/**
 * One stroke of a sign or of a chart.
 *
 * @param shape its line, or its outline where it is filled
 * @param filled whether the outline is filled
 */
public record SignMark(Shape shape, boolean filled) {
    static SignMark line(Shape shape) {
        return new SignMark(shape, false);
    }

    static SignMark dot(Shape shape) {
        return new SignMark(shape, true);
    }
}
