package roundwright.pattern.chart;

import java.util.List;
import roundwright.pattern.Step;

/**
 * One sign of the chart.
 *
 * @param stepIndex place of its step in the round's steps
 * @param step what the hands do
 * @param angle where it stands, in radians: 0 at the top, growing the way the round is worked
 * @param below angles of the stitches below that it uses; empty where it goes into the ring or is a chain
 * @param first number of the first stitch of its step in the round, from 1; 0 where the step makes none
 */
public record ChartSign(int stepIndex, Step step, double angle, List<Double> below, int first) {
    public ChartSign {
        below = List.copyOf(below);
    }

    /** Whether its legs are drawn strongly: it changes the count. */
    public boolean shapes() {
        return step.increases() || step.decreases();
    }
}
