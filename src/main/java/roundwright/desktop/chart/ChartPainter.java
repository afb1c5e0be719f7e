package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.OptionalInt;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.pattern.Step;
import roundwright.pattern.chart.ChartSign;
import roundwright.pattern.chart.RoundChart;
import roundwright.pattern.chart.SignShapes;

/**
 * Draws a round's chart about a centre. Right-handed it is read anticlockwise, left-handed clockwise; it begins at the small
 * triangle at the top.
 *
 * @param chart where the signs stand
 * @param centreX of the ring, in pixels
 * @param centreY of the ring, in pixels
 * @param radius out to the feet of the signs, in pixels
 * @param leftHanded mirrored
 */
record ChartPainter(RoundChart chart, double centreX, double centreY, double radius, boolean leftHanded) {
    private static final double INNER = 0.74;

    /** Size of a sign: as large as the ring allows, up to a size that is read from an arm's length. */
    double unit() {
        double room = 2 * Math.PI * radius / Math.max(1, chart.signs().size());
        return Math.max(Space.points(3), Math.min(Space.points(15), room * 0.82));
    }

    Point2D at(double angle, double distance) {
        double turned = leftHanded ? angle : -angle;
        return new Point2D.Double(centreX + distance * Math.sin(turned), centreY - distance * Math.cos(turned));
    }

    private boolean fromRing() {
        return chart.takes() == 0;
    }

    void paint(Graphics2D graphics, OptionalInt chosenStep) {
        paintBelow(graphics);
        chart.signs().forEach(sign -> paintLegs(graphics, sign));
        for (ChartSign sign : chart.signs()) {
            boolean chosen = chosenStep.isPresent() && chosenStep.getAsInt() == sign.stepIndex();
            paintSign(graphics, sign, chosen);
        }
        paintStart(graphics);
    }

    private void paintBelow(Graphics2D graphics) {
        double inner = radius * INNER;
        if (fromRing()) {
            double ring = radius * 0.3;
            graphics.setColor(Tone.INK.color());
            graphics.setStroke(new BasicStroke(Space.points(1.6)));
            graphics.draw(new Ellipse2D.Double(centreX - ring, centreY - ring, 2 * ring, 2 * ring));
            return;
        }
        graphics.setColor(Tone.MUTED.color());
        double dot = Math.max(Space.points(1.4), Math.min(Space.points(3.4), unit() * 0.3));
        for (double angle : chart.below()) {
            Point2D place = at(angle, inner);
            graphics.fill(new Ellipse2D.Double(place.getX() - dot / 2, place.getY() - dot / 2, dot, dot));
        }
        graphics.setStroke(new BasicStroke(Space.points(1.2)));
        chart.passedOver().forEach(angle -> {
            Point2D place = at(angle, inner);
            double side = dot * 2.4;
            graphics.draw(new Ellipse2D.Double(place.getX() - side / 2, place.getY() - side / 2, side, side));
        });
    }

    private void paintLegs(Graphics2D graphics, ChartSign sign) {
        Color color = (sign.shapes() ? Tone.MARIGOLD : Tone.EDGE).color();
        graphics.setColor(color);
        graphics.setStroke(new BasicStroke(Space.points(sign.shapes() ? 1.6 : 0.7)));
        Point2D foot = at(sign.angle(), radius);
        if (sign.below().isEmpty()) {
            if (sign.step().action() == Step.Action.INTO_RING) {
                graphics.draw(new Line2D.Double(at(sign.angle(), radius * 0.3), foot));
            }
            return;
        }
        for (double below : sign.below()) {
            graphics.draw(new Line2D.Double(at(below, radius * INNER + Space.points(3)), foot));
        }
    }

    private void paintSign(Graphics2D graphics, ChartSign sign, boolean chosen) {
        Point2D foot = at(sign.angle(), radius);
        double unit = unit();
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.translate(foot.getX(), foot.getY());
        copy.rotate(leftHanded ? sign.angle() : -sign.angle());
        if (chosen) {
            double height = unit * (SignShapes.height(sign.step()) + 0.5);
            copy.setColor(Tone.WASH.color());
            copy.fill(new Ellipse2D.Double(-unit * 0.85, -height - unit * 0.1, unit * 1.7, height + unit * 0.35));
            copy.setColor(Tone.PINE.color());
            copy.setStroke(new BasicStroke(Space.points(1.4)));
            copy.draw(new Ellipse2D.Double(-unit * 0.85, -height - unit * 0.1, unit * 1.7, height + unit * 0.35));
        }
        copy.setColor((chosen ? Tone.PINE : sign.shapes() ? Tone.MARIGOLD : Tone.INK).color());
        copy.translate(0, -unit * 0.1);
        SignPainter.paint(copy, sign.step(), unit);
        copy.dispose();
    }

    /** The small filled triangle of the trade where the round begins; it points the way the round is worked. */
    private void paintStart(Graphics2D graphics) {
        double out = radius + unit() * 0.6;
        double side = Space.points(4);
        Point2D place = at(0, out);
        double way = leftHanded ? 1 : -1;
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(place.getX() + way * side, place.getY());
        triangle.lineTo(place.getX() - way * side * 0.7, place.getY() - side);
        triangle.lineTo(place.getX() - way * side * 0.7, place.getY() + side);
        triangle.closePath();
        graphics.setColor(Tone.PINE.color());
        graphics.fill(triangle);
    }
}
