package roundwright.desktop.look;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** Reads the data of an SVG path: {@code M16 21v-2a4 4 0 0 0-4-4H6}. Capital letters are places, small ones steps from the last place. */
final class PathData {
    private final String data;
    private final Path2D path = new Path2D.Double();
    private int at;
    private Point2D here = new Point2D.Double();

    PathData(String data) {
        this.data = data;
    }

    Path2D read() {
        char command = ' ';
        while (more()) {
            char letter = data.charAt(at);
            if (Character.isLetter(letter)) {
                at++;
                command = letter;
            } else if (Character.toUpperCase(command) == 'M') {
                // places after the first one are lines
                command = (char) (command - 'M' + 'L');
            }
            draw(Character.toUpperCase(command), Character.isLowerCase(command));
        }
        return path;
    }

    private void draw(char command, boolean step) {
        switch (command) {
            case 'M' -> {
                here = place(step);
                path.moveTo(here.getX(), here.getY());
            }
            case 'L' -> lineTo(place(step));
            case 'H' -> lineTo(new Point2D.Double(number() + (step ? here.getX() : 0), here.getY()));
            case 'V' -> lineTo(new Point2D.Double(here.getX(), number() + (step ? here.getY() : 0)));
            case 'C' -> curveTo(place(step), place(step), place(step));
            case 'A' -> arcTo(number(), number(), number(), flag(), flag(), place(step));
            case 'Z' -> {
                path.closePath();
                here = path.getCurrentPoint();
            }
            default -> throw new IllegalArgumentException("no such line at " + (at - 1) + " of " + data);
        }
    }

    private void lineTo(Point2D end) {
        path.lineTo(end.getX(), end.getY());
        here = end;
    }

    private void curveTo(Point2D first, Point2D second, Point2D end) {
        path.curveTo(first.getX(), first.getY(), second.getX(), second.getY(), end.getX(), end.getY());
        here = end;
    }

    /**
     * The arc of an ellipse between two points: seen from where the ellipse is a circle of radius 1, its middle lies on the line that halves
     * the two, on one side or the other.
     */
    private void arcTo(double across, double down, double tilt, boolean large, boolean clockwise, Point2D end) {
        double angle = Math.toRadians(tilt);
        AffineTransform toCircle = AffineTransform.getScaleInstance(1 / across, 1 / down);
        toCircle.rotate(-angle);
        AffineTransform fromCircle = AffineTransform.getRotateInstance(angle);
        fromCircle.scale(across, down);
        Point2D first = toCircle.transform(here, null);
        Point2D last = toCircle.transform(end, null);
        double half = first.distance(last) / 2;
        double radius = Math.max(1, half);
        double off = Math.sqrt(radius * radius - half * half) / (2 * half) * (large == clockwise ? -1 : 1);
        double x = (first.getX() + last.getX()) / 2 - off * (last.getY() - first.getY());
        double y = (first.getY() + last.getY()) / 2 + off * (last.getX() - first.getX());
        double from = Math.atan2(first.getY() - y, first.getX() - x);
        double turn = Math.atan2(last.getY() - y, last.getX() - x) - from;
        double whole = 2 * Math.PI;
        turn = clockwise ? (turn + whole) % whole : (turn - whole) % whole;
        Arc2D arc = new Arc2D.Double(
                x - radius,
                y - radius,
                2 * radius,
                2 * radius,
                -Math.toDegrees(from),
                -Math.toDegrees(turn),
                Arc2D.OPEN);
        path.append(arc.getPathIterator(fromCircle), true);
        here = end;
    }

    private Point2D place(boolean step) {
        double x = number();
        double y = number();
        return step ? new Point2D.Double(here.getX() + x, here.getY() + y) : new Point2D.Double(x, y);
    }

    /** One digit, which the next number may follow without a blank. */
    private boolean flag() {
        more();
        return data.charAt(at++) == '1';
    }

    /** Passes over what stands between numbers; whether there is more. */
    private boolean more() {
        while (at < data.length() && (data.charAt(at) == ' ' || data.charAt(at) == ',')) {
            at++;
        }
        return at < data.length();
    }

    /** A second point, or a second minus, begins another number. */
    private double number() {
        more();
        int from = at;
        boolean point = false;
        while (at < data.length() && partOfNumber(data.charAt(at), at == from, point)) {
            point |= data.charAt(at) == '.';
            at++;
        }
        return Double.parseDouble(data.substring(from, at));
    }

    private static boolean partOfNumber(char c, boolean first, boolean point) {
        return Character.isDigit(c) || c == '-' && first || c == '.' && !point;
    }
}
