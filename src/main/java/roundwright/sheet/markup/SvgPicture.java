package roundwright.sheet.markup;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Writes a picture as SVG, for pages that a browser shows. Neighbouring strokes of one pen become one path. */
final class SvgPicture {
    private SvgPicture() {}

    static Element of(Picture picture) {
        Element svg = Element.of("svg", Element.of("title", picture.words()))
                .with("role", "img")
                .with("aria-label", picture.words())
                .with("viewBox", "0 0 " + number(picture.width()) + " " + number(picture.height()))
                .with("width", number(picture.width()))
                .with("height", number(picture.height()));
        for (List<Stroke> run : runs(picture.strokes())) {
            svg.add(path(run));
        }
        return svg;
    }

    private static List<List<Stroke>> runs(List<Stroke> strokes) {
        List<List<Stroke>> runs = new ArrayList<>();
        for (Stroke stroke : strokes) {
            List<Stroke> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (!last.isEmpty()
                    && last.get(0).color().equals(stroke.color())
                    && last.get(0).width() == stroke.width()) {
                last.add(stroke);
            } else {
                runs.add(new ArrayList<>(List.of(stroke)));
            }
        }
        return runs;
    }

    private static Element path(List<Stroke> run) {
        Stroke pen = run.get(0);
        StringBuilder data = new StringBuilder();
        run.forEach(stroke -> data(stroke.shape(), data));
        Element path = Element.of("path").with("d", data.toString().strip());
        return pen.filled()
                ? path.with("fill", hex(pen.color()))
                : path.with("fill", "none")
                        .with("stroke", hex(pen.color()))
                        .with("stroke-width", number(pen.width()))
                        .with("stroke-linecap", "round");
    }

    private static void data(Shape shape, StringBuilder data) {
        double[] points = new double[6];
        for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
            int kind = path.currentSegment(points);
            data.append("MLQCZ".charAt(kind));
            int numbers = new int[] {2, 2, 4, 6, 0}[kind];
            for (int i = 0; i < numbers; i++) {
                data.append(i == 0 ? "" : " ").append(number(points[i]));
            }
        }
    }

    private static String hex(Color color) {
        return String.format("#%06X", color.getRGB() & 0xFFFFFF);
    }

    /** To a hundredth of a point, which no eye sees. */
    private static String number(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
