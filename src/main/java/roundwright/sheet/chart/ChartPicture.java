package roundwright.sheet.chart;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Terms;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.chart.ChartDrawing;
import roundwright.pattern.chart.ChartSetting;
import roundwright.pattern.chart.ChartWords;
import roundwright.pattern.chart.RoundChart;
import roundwright.pattern.chart.SignMark;
import roundwright.pattern.chart.SignShapes;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.Stroke;

/** The chart of a round, and its signs by themselves for a key, in the colours of the sheets. */
public final class ChartPicture {
    private static final Color INK = new Color(0x2A2521);
    private static final Color SHAPING = new Color(0x9A5B0B);
    private static final Color BELOW = new Color(0x8A8075);
    private static final Color WRONG = new Color(0x8B2F6F);
    private static final Color START = new Color(0x1B6A66);
    private static final double SIGN = 16;

    private ChartPicture() {}

    /** The chart of a round on a sheet of that width in points. */
    public static Picture of(Steps steps, Terms terms, double width, ChartSetting setting) {
        RoundChart chart = RoundChart.of(steps);
        ChartDrawing drawing = ChartDrawing.of(chart, width, setting);
        List<Stroke> strokes = drawing.strokes().stream()
                .map(stroke -> new Stroke(stroke.mark().shape(), color(stroke.ink()), stroke.width()))
                .toList();
        return new Picture(drawing.width(), drawing.height(), strokes, new ChartWords(chart, terms).whole());
    }

    private static Color color(ChartDrawing.Ink ink) {
        return switch (ink) {
            case PLAIN -> INK;
            case SHAPING -> SHAPING;
            case BELOW -> BELOW;
            case START -> START;
            case WRONG -> WRONG;
        };
    }

    /** The sign of a step by itself: an increase as signs on legs from one foot, a decrease as legs to one head. */
    public static Picture sign(Step step, String name) {
        List<Stroke> strokes = new ArrayList<>();
        boolean apart = step.increases() && step.action() == Step.Action.INCREASE;
        if (step.action() == Step.Action.SKIP) {
            strokes.add(new Stroke(new Ellipse2D.Double(SIGN * 0.3, SIGN * 0.3, SIGN * 0.4, SIGN * 0.4), BELOW, 1));
        } else if (apart) {
            leg(strokes, SIGN / 2, SIGN * 0.95, SIGN * 0.25, SIGN * 0.5);
            leg(strokes, SIGN / 2, SIGN * 0.95, SIGN * 0.75, SIGN * 0.5);
            sign(strokes, step, SIGN * 0.25, SIGN * 0.5, SIGN * 0.45, SHAPING);
            sign(strokes, step, SIGN * 0.75, SIGN * 0.5, SIGN * 0.45, SHAPING);
        } else if (step.decreases()) {
            leg(strokes, SIGN * 0.2, SIGN * 0.95, SIGN / 2, SIGN * 0.5);
            leg(strokes, SIGN * 0.8, SIGN * 0.95, SIGN / 2, SIGN * 0.5);
            sign(strokes, step, SIGN / 2, SIGN * 0.5, SIGN * 0.45, SHAPING);
        } else {
            sign(strokes, step, SIGN / 2, SIGN * 0.85, SIGN * 0.75, INK);
        }
        return new Picture(SIGN, SIGN, strokes, name);
    }

    private static void leg(List<Stroke> strokes, double fromX, double fromY, double toX, double toY) {
        strokes.add(new Stroke(new Line2D.Double(fromX, fromY, toX, toY), SHAPING, 1));
    }

    private static void sign(List<Stroke> strokes, Step step, double x, double y, double height, Color color) {
        double unit = height / Math.max(1, SignShapes.height(step));
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(unit, unit);
        for (SignMark mark : SignShapes.of(step)) {
            strokes.add(new Stroke(place.createTransformedShape(mark.shape()), color, mark.filled() ? 0 : 1.1));
        }
    }
}
