package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import roundwright.pattern.Step;
import roundwright.pattern.chart.SignMark;
import roundwright.pattern.chart.SignShapes;

/** Draws the sign of a step on the origin, growing towards negative y. */
final class SignPainter {
    private SignPainter() {}

    /** Draws the sign of a step at a size in pixels a unit. */
    static void paint(Graphics2D graphics, Step step, double unit) {
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.scale(unit, unit);
        copy.setStroke(
                new BasicStroke((float) (1.7 / Math.max(unit, 6)), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (SignMark mark : SignShapes.of(step)) {
            if (mark.filled()) {
                copy.fill(mark.shape());
            } else {
                copy.draw(mark.shape());
            }
        }
        copy.dispose();
    }
}
