package roundwright.pattern.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A whole chart as strokes on a sheet, to be drawn with any pen. Right-handed a ring is read anticlockwise and a first row from right to
 * left, left-handed the other way; it begins at the small filled triangle.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param strokes in the order in which they are drawn
 * @param stands where the signs stand
 */
public record ChartDrawing(double width, double height, List<Stroke> strokes, List<Stand> stands) {
    /** What a stroke stands for; the pen chooses its colour. */
    public enum Ink {
        /** A stitch that leaves the count as it is. */
        PLAIN,
        /** An increase or a decrease. */
        SHAPING,
        /** The round below, and what joins a stitch to it. */
        BELOW,
        /** Where the round begins, and which way it goes. */
        START,
        /** A ring round what was worked wrongly. */
        WRONG
    }

    /**
     * One stroke.
     *
     * @param width of the pen, in the units of the sheet; 0 where the shape is filled
     * @param step the step whose sign it belongs to; -1 where it belongs to none
     */
    public record Stroke(SignMark mark, Ink ink, double width, int step) {}

    /**
     * Where a sign stands.
     *
     * @param step its step
     * @param x of its middle
     * @param y of its middle
     * @param reach half its larger side, with some air
     */
    public record Stand(int step, double x, double y, double reach) {
        private double distance(double toX, double toY) {
            return Math.hypot(x - toX, y - toY);
        }
    }

    public ChartDrawing {
        strokes = List.copyOf(strokes);
        stands = List.copyOf(stands);
    }

    /** The chart of a round on a sheet of that width. */
    public static ChartDrawing of(RoundChart chart, double width, ChartSetting setting) {
        return new ChartPen(chart, Ground.of(chart, setting, width), setting).drawing();
    }

    /** The step whose sign stands nearest to a point; empty where there is no sign. */
    public Optional<Integer> nearest(double x, double y) {
        return stands.stream()
                .min(Comparator.comparingDouble(stand -> stand.distance(x, y)))
                .map(Stand::step);
    }

    /** Where the signs of one step stand. */
    public List<Stand> standsOf(int step) {
        return stands.stream().filter(stand -> stand.step() == step).toList();
    }
}
