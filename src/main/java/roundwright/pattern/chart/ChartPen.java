package roundwright.pattern.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import roundwright.pattern.Step;
import roundwright.pattern.chart.ChartDrawing.Ink;
import roundwright.pattern.chart.ChartDrawing.Stand;
import roundwright.pattern.chart.ChartDrawing.Stroke;

/** Draws one chart on its ground. */
final class ChartPen {
    private static final double TURN = 2 * Math.PI;
    private static final int NONE = -1;

    private final RoundChart chart;
    private final Ground ground;
    private final ChartSetting setting;
    private final double thin;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Stand> stands = new ArrayList<>();

    ChartPen(RoundChart chart, Ground ground, ChartSetting setting) {
        this.chart = chart;
        this.ground = ground;
        this.setting = setting;
        this.thin = ground.width() / 240;
    }

    ChartDrawing drawing() {
        below();
        chart.signs().forEach(this::legs);
        chart.signs().forEach(this::sign);
        stands.stream().filter(stand -> setting.wrong().contains(stand.step())).forEach(this::wrong);
        start();
        return new ChartDrawing(ground.width(), ground.height(), strokes, stands);
    }

    private Point2D at(double angle, double out) {
        return ground.line().at(angle / TURN, out);
    }

    private void line(Shape shape, Ink ink, double width, int step) {
        strokes.add(new Stroke(SignMark.line(shape), ink, width, step));
    }

    private void dot(Shape shape, Ink ink) {
        strokes.add(new Stroke(SignMark.dot(shape), ink, 0, NONE));
    }

    private static Shape circle(Point2D middle, double radius) {
        return new Ellipse2D.Double(middle.getX() - radius, middle.getY() - radius, 2 * radius, 2 * radius);
    }

    private void below() {
        if (chart.takes() == 0) {
            line(ground.start(), Ink.PLAIN, thin * 1.6, NONE);
            return;
        }
        double dot = Math.max(thin * 0.8, Math.min(thin * 2, ground.unit() * 0.15));
        chart.below().forEach(angle -> dot(circle(at(angle, -ground.depth()), dot), Ink.BELOW));
        chart.passedOver().forEach(skipped -> {
            Point2D place = at(skipped.angle(), -ground.depth());
            line(circle(place, dot * 2.4), Ink.BELOW, thin * 1.2, skipped.stepIndex());
            stands.add(new Stand(skipped.stepIndex(), place.getX(), place.getY(), dot * 4));
        });
    }

    private void legs(ChartSign sign) {
        Point2D foot = at(sign.angle(), 0);
        Ink ink = sign.shapes() ? Ink.SHAPING : Ink.BELOW;
        double width = thin * (sign.shapes() ? 1.6 : 0.8);
        if (sign.below().isEmpty() && sign.step().action() == Step.Action.INTO_RING) {
            line(new Line2D.Double(at(sign.angle(), -ground.depth()), foot), Ink.BELOW, width, sign.stepIndex());
        }
        for (double below : sign.below()) {
            Point2D from = at(below, thin * 3 - ground.depth());
            line(new Line2D.Double(from, foot), ink, width, sign.stepIndex());
        }
    }

    private void sign(ChartSign sign) {
        double unit = ground.unit();
        Point2D foot = at(sign.angle(), 0);
        AffineTransform place = AffineTransform.getTranslateInstance(foot.getX(), foot.getY());
        place.rotate(ground.line().turn(sign.angle() / TURN));
        place.translate(0, -unit * 0.1);
        place.scale(setting.leftHanded() ? -unit : unit, unit);
        Ink ink = sign.shapes() ? Ink.SHAPING : Ink.PLAIN;
        for (SignMark mark : SignShapes.of(sign.step())) {
            Shape shape = place.createTransformedShape(mark.shape());
            double width = mark.filled() ? 0 : Math.min(thin * 1.7, unit * 0.14);
            strokes.add(new Stroke(new SignMark(shape, mark.filled()), ink, width, sign.stepIndex()));
        }
        double half = unit * SignShapes.height(sign.step()) / 2;
        Point2D middle = at(sign.angle(), half + unit * 0.1);
        stands.add(new Stand(sign.stepIndex(), middle.getX(), middle.getY(), Math.max(half, unit / 2) + unit * 0.3));
    }

    private void wrong(Stand stand) {
        Point2D middle = new Point2D.Double(stand.x(), stand.y());
        line(circle(middle, Math.max(stand.reach() * 1.1, thin * 6)), Ink.WRONG, thin * 1.8, stand.step());
    }

    /** The triangle points the way the round is worked. */
    private void start() {
        double side = Math.max(thin * 2, Math.min(thin * 4, ground.unit() * 0.3));
        Point2D place = at(0, ground.unit() * 0.6);
        double way = ground.forward();
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(place.getX() + way * side, place.getY());
        triangle.lineTo(place.getX() - way * side * 0.7, place.getY() - side);
        triangle.lineTo(place.getX() - way * side * 0.7, place.getY() + side);
        triangle.closePath();
        dot(triangle, Ink.START);
    }
}
