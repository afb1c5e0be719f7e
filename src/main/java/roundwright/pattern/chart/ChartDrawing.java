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

/**
 * A whole chart as strokes on a square sheet, to be drawn with any pen. Right-handed it is read anticlockwise, left-handed clockwise; it
 * begins at the small filled triangle at the top.
 *
 * @param size side of the square
 * @param strokes in the order in which they are drawn
 */
public record ChartDrawing(double size, List<Stroke> strokes) {
    /** What a stroke stands for; the pen chooses its colour. */
    public enum Ink {
        /** A stitch that leaves the count as it is. */
        PLAIN,
        /** An increase or a decrease. */
        SHAPING,
        /** The round below, and what joins a stitch to it. */
        BELOW,
        /** Where the round begins, and which way it goes. */
        START
    }

    /**
     * One stroke.
     *
     * @param width of the pen, in the units of the sheet; 0 where the shape is filled
     */
    public record Stroke(SignMark mark, Ink ink, double width) {}

    public ChartDrawing {
        strokes = List.copyOf(strokes);
    }

    /** The chart of a round on a square of that side. */
    public static ChartDrawing of(RoundChart chart, double size, boolean leftHanded) {
        Pen pen = new Pen(chart, size, leftHanded);
        pen.below();
        chart.signs().forEach(pen::legs);
        chart.signs().forEach(pen::sign);
        pen.start();
        return new ChartDrawing(size, pen.strokes);
    }

    /** One chart being drawn. */
    private static final class Pen {
        private static final double INNER = 0.74;
        private static final double RING = 0.3;
        private static final double MARGIN = 0.035;

        private final RoundChart chart;
        private final boolean leftHanded;
        private final double centre;
        private final double radius;
        private final double unit;
        private final double thin;
        private final List<Stroke> strokes = new ArrayList<>();

        Pen(RoundChart chart, double size, boolean leftHanded) {
            this.chart = chart;
            this.leftHanded = leftHanded;
            this.centre = size / 2;
            this.thin = size / 240;
            double tallest = chart.signs().stream()
                    .mapToDouble(sign -> SignShapes.height(sign.step()))
                    .max()
                    .orElse(1);
            double room = centre - size * MARGIN;
            double largest = size / 15;
            this.radius = Math.max(room * 0.3, room - largest * tallest);
            this.unit = Math.min(
                    largest, 2 * Math.PI * radius / Math.max(1, chart.signs().size()) * 0.82);
        }

        private Point2D at(double angle, double distance) {
            double turned = leftHanded ? angle : -angle;
            return new Point2D.Double(centre + distance * Math.sin(turned), centre - distance * Math.cos(turned));
        }

        private void line(Shape shape, Ink ink, double width) {
            strokes.add(new Stroke(SignMark.line(shape), ink, width));
        }

        private void dot(Shape shape, Ink ink) {
            strokes.add(new Stroke(SignMark.dot(shape), ink, 0));
        }

        private static Shape circle(Point2D middle, double radius) {
            return new Ellipse2D.Double(middle.getX() - radius, middle.getY() - radius, 2 * radius, 2 * radius);
        }

        void below() {
            if (chart.takes() == 0) {
                line(circle(new Point2D.Double(centre, centre), radius * RING), Ink.PLAIN, thin * 1.6);
                return;
            }
            double dot = Math.max(thin * 0.8, Math.min(thin * 2, unit * 0.15));
            chart.below().forEach(angle -> dot(circle(at(angle, radius * INNER), dot), Ink.BELOW));
            chart.passedOver()
                    .forEach(angle -> line(circle(at(angle, radius * INNER), dot * 2.4), Ink.BELOW, thin * 1.2));
        }

        void legs(ChartSign sign) {
            Point2D foot = at(sign.angle(), radius);
            Ink ink = sign.shapes() ? Ink.SHAPING : Ink.BELOW;
            double width = thin * (sign.shapes() ? 1.6 : 0.8);
            if (sign.below().isEmpty() && sign.step().action() == Step.Action.INTO_RING) {
                line(new Line2D.Double(at(sign.angle(), radius * RING), foot), Ink.BELOW, width);
            }
            for (double below : sign.below()) {
                line(new Line2D.Double(at(below, radius * INNER + thin * 3), foot), ink, width);
            }
        }

        void sign(ChartSign sign) {
            Point2D foot = at(sign.angle(), radius);
            AffineTransform place = AffineTransform.getTranslateInstance(foot.getX(), foot.getY());
            place.rotate(leftHanded ? sign.angle() : -sign.angle());
            place.translate(0, -unit * 0.1);
            place.scale(leftHanded ? -unit : unit, unit);
            Ink ink = sign.shapes() ? Ink.SHAPING : Ink.PLAIN;
            for (SignMark mark : SignShapes.of(sign.step())) {
                Shape shape = place.createTransformedShape(mark.shape());
                strokes.add(new Stroke(new SignMark(shape, mark.filled()), ink, mark.filled() ? 0 : thin * 1.7));
            }
        }

        /** The triangle points the way the round is worked. */
        void start() {
            double side = thin * 5;
            Point2D place = at(0, radius + unit * 0.6);
            double way = leftHanded ? 1 : -1;
            Path2D triangle = new Path2D.Double();
            triangle.moveTo(place.getX() + way * side, place.getY());
            triangle.lineTo(place.getX() - way * side * 0.7, place.getY() - side);
            triangle.lineTo(place.getX() - way * side * 0.7, place.getY() + side);
            triangle.closePath();
            dot(triangle, Ink.START);
        }
    }
}
