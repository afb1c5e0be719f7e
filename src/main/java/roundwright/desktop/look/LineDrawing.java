package roundwright.desktop.look;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a plain line drawing of 24 by 24 points from an SVG file: paths, circles, rectangles and lines, all drawn with one pen of 2
 * points. Colours, groups and transforms do not come in such drawings.
 */
final class LineDrawing {
    /** Side of the square that they are drawn in. */
    static final double SIDE = 24;

    /** Width of the pen. */
    static final float PEN = 2;

    private static final Pattern ELEMENT =
            Pattern.compile("<(path|circle|rect|line|polyline|polygon|ellipse|g)\\b([^>]*)>");

    private final String attributes;

    private LineDrawing(String attributes) {
        this.attributes = attributes;
    }

    /** The drawing of a file of this name beside the other icons. */
    static Shape named(String name) {
        String file = "icons/" + name + ".svg";
        try (InputStream stream = LineDrawing.class.getResourceAsStream("/roundwright/desktop/look/" + file)) {
            return read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(file, failure);
        }
    }

    static Path2D read(String svg) {
        Path2D all = new Path2D.Double();
        Matcher elements = ELEMENT.matcher(svg);
        while (elements.find()) {
            all.append(new LineDrawing(elements.group(2)).shape(elements.group(1)), false);
        }
        return all;
    }

    private Shape shape(String element) {
        return switch (element) {
            case "path" -> new PathData(text("d")).read();
            case "circle" -> circle(number("cx"), number("cy"), number("r"));
            case "line" -> new Line2D.Double(number("x1"), number("y1"), number("x2"), number("y2"));
            case "rect" ->
                new RoundRectangle2D.Double(
                        number("x"),
                        number("y"),
                        number("width"),
                        number("height"),
                        2 * number("rx"),
                        2 * number("rx"));
            default -> throw new IllegalArgumentException("a line drawing has no " + element);
        };
    }

    private static Shape circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** A number that is not there is 0. */
    private double number(String name) {
        String text = text(name);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private String text(String name) {
        String beginning = " " + name + "=\"";
        int at = attributes.indexOf(beginning);
        int from = at + beginning.length();
        return at < 0 ? "" : attributes.substring(from, attributes.indexOf('"', from));
    }
}
