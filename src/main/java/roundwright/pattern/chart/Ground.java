package roundwright.pattern.chart;

import java.awt.Shape;
import java.awt.geom.RoundRectangle2D;
import roundwright.pattern.WorkedAs;

/**
 * What a chart stands on, on a sheet of a width.
 *
 * @param line where the feet of the signs stand
 * @param depth how far below them the stitches of the round below lie, or the edge of what the round is begun in
 * @param unit size of a sign: as large as the line allows, and no larger than is read from an arm's length
 * @param start the ring or chain in the middle, drawn where no round lies below
 * @param forward 1 where the round sets out to the right, -1 to the left
 */
record Ground(double width, double height, Baseline line, double depth, double unit, Shape start, int forward) {
    private static final double MARGIN = 0.035;
    private static final double LARGEST = 1 / 15.0;
    private static final double CROWDING = 0.82;
    private static final double OVAL_HEIGHT = 0.7;
    private static final double RING_DEPTH = 0.7;
    private static final double ROUND_DEPTH = 0.26;
    private static final double OVAL_DEPTH = 0.3;
    private static final double OVAL_CHAIN_DEPTH = 0.82;
    private static final double ROW_DEPTH = 1.1;
    private static final double ROW_ENDS = 0.8;

    static Ground of(RoundChart chart, ChartSetting setting, double width) {
        return setting.worked() == WorkedAs.ROWS ? row(chart, setting, width) : loop(chart, setting, width);
    }

    private static double tallest(RoundChart chart) {
        return chart.signs().stream()
                .mapToDouble(sign -> SignShapes.height(sign.step()))
                .max()
                .orElse(1);
    }

    private static double unit(Baseline line, RoundChart chart, double largest) {
        int places = Math.max(1, Math.max(chart.signs().size(), chart.takes()));
        return Math.min(largest, line.length() / places * CROWDING);
    }

    private static Ground loop(RoundChart chart, ChartSetting setting, double width) {
        boolean oval = setting.worked() == WorkedAs.OVAL;
        boolean begun = chart.takes() == 0;
        double height = oval ? width * OVAL_HEIGHT : width;
        double largest = width * LARGEST;
        double room = height / 2 - width * MARGIN;
        double radius = Math.max(room * 0.3, room - largest * tallest(chart));
        double half = (width - height) / 2;
        Baseline line = new Baseline.Loop(width / 2, height / 2, half, radius, setting.leftHanded());
        double depth = radius * (oval ? begun ? OVAL_CHAIN_DEPTH : OVAL_DEPTH : begun ? RING_DEPTH : ROUND_DEPTH);
        double inner = radius - depth;
        Shape middle = new RoundRectangle2D.Double(
                width / 2 - half - inner, height / 2 - inner, 2 * (half + inner), 2 * inner, 2 * inner, 2 * inner);
        return new Ground(
                width, height, line, depth, unit(line, chart, largest), middle, setting.leftHanded() ? 1 : -1);
    }

    private static Ground row(RoundChart chart, ChartSetting setting, double width) {
        boolean leftward = setting.leftHanded() == setting.back();
        double largest = width * LARGEST;
        double margin = width * MARGIN + largest * ROW_ENDS;
        double foot = width * MARGIN + largest * (tallest(chart) + 0.4);
        Baseline line = new Baseline.Row(margin, width - margin, foot, leftward);
        double unit = unit(line, chart, largest);
        double depth = (largest + unit) * ROW_DEPTH;
        double thick = largest * 0.3;
        Shape chain = new RoundRectangle2D.Double(margin, foot + depth, width - 2 * margin, thick, thick, thick);
        double height = foot + depth + thick + width * MARGIN;
        return new Ground(width, height, line, depth, unit, chain, leftward ? -1 : 1);
    }
}
