package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import roundwright.desktop.look.Space;
import roundwright.pattern.Step;
import roundwright.pattern.chart.SignShapes;

/** A sign by itself, standing on the origin: an increase as signs on legs from one foot, a decrease as legs to one head. */
final class KeySign {
    private KeySign() {}

    static void paint(Graphics2D graphics, Step step, double height) {
        graphics.setStroke(new BasicStroke(Space.points(1.4)));
        if (step.action() == Step.Action.SKIP) {
            double side = height * 0.4;
            graphics.draw(new Ellipse2D.Double(-side / 2, -height / 2 - side / 2, side, side));
        } else if (step.increases() && step.action() == Step.Action.INCREASE) {
            apart(graphics, step, height);
        } else if (step.decreases()) {
            graphics.draw(new Line2D.Double(-height * 0.3, 0, 0, -height * 0.5));
            graphics.draw(new Line2D.Double(height * 0.3, 0, 0, -height * 0.5));
            sign(graphics, step, 0, height * 0.5, height * 0.5);
        } else {
            sign(graphics, step, 0, height * 0.1, height * 0.85);
        }
    }

    private static void apart(Graphics2D graphics, Step step, double height) {
        for (int side = -1; side <= 1; side += 2) {
            graphics.draw(new Line2D.Double(0, 0, side * height * 0.28, -height * 0.5));
            sign(graphics, step, side * height * 0.28, height * 0.5, height * 0.45);
        }
    }

    private static void sign(Graphics2D graphics, Step step, double x, double up, double unit) {
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.translate(x, -up);
        SignPainter.paint(copy, step, unit / Math.max(1, SignShapes.height(step)));
        copy.dispose();
    }
}
