package roundwright.pattern.chart;

import java.util.ArrayList;
import java.util.List;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/**
 * Where the signs of a round stand. Each step has a sector of the ring whose width is half its share of the stitches below and
 * half its share of the stitches made, so that a stitch stands over what it is worked into.
 *
 * @param steps the round
 * @param signs one for each stitch made; one for a step that makes none
 * @param passedOver the stitches below that are skipped
 */
public record RoundChart(Steps steps, List<ChartSign> signs, List<PassedOver> passedOver) {
    private static final double TURN = 2 * Math.PI;
    private static final double TOGETHER = 0.8;

    /**
     * A stitch below that is skipped.
     *
     * @param stepIndex place of the skip in the round's steps
     * @param angle where it stands
     */
    public record PassedOver(int stepIndex, double angle) {}

    public RoundChart {
        signs = List.copyOf(signs);
        passedOver = List.copyOf(passedOver);
    }

    public static RoundChart of(Steps steps) {
        List<ChartSign> signs = new ArrayList<>();
        List<PassedOver> skipped = new ArrayList<>();
        double whole =
                steps.list().stream().mapToDouble(step -> weight(step, steps)).sum();
        double done = 0;
        int made = 0;
        for (int i = 0; i < steps.list().size(); i++) {
            Step step = steps.list().get(i);
            double width = whole == 0 ? 0 : TURN * weight(step, steps) / whole;
            List<Double> below = spread(done, width, step.takes());
            if (step.action() == Step.Action.SKIP) {
                int skip = i;
                below.forEach(angle -> skipped.add(new PassedOver(skip, angle)));
            } else {
                place(signs, i, step, heads(done, width, signsOf(step)), below, made);
            }
            made += step.makes();
            done += width;
        }
        return new RoundChart(steps, signs, skipped);
    }

    private static double weight(Step step, Steps steps) {
        double taken = steps.takes() == 0 ? 0 : step.takes() / (double) steps.takes();
        double made = steps.makes() == 0 ? 0 : step.makes() / (double) steps.makes();
        return taken + made;
    }

    /** The signs of one step stand closer to each other than to their neighbours. */
    private static List<Double> heads(double from, double width, int count) {
        double apart = count == 1 ? width : width * TOGETHER;
        return spread(from + (width - apart) / 2, apart, count);
    }

    /** A bobble or a shell that counts as one or more stitches is drawn as one sign. */
    private static int signsOf(Step step) {
        return step.action() == Step.Action.GROUP ? 1 : Math.max(1, step.makes());
    }

    private static void place(
            List<ChartSign> signs, int index, Step step, List<Double> angles, List<Double> below, int made) {
        for (int k = 0; k < angles.size(); k++) {
            int number = step.makes() == 0 ? 0 : made + 1;
            signs.add(new ChartSign(index, step, angles.get(k), below, number));
        }
    }

    /** So many angles, evenly in the middle of a sector. */
    private static List<Double> spread(double from, double width, int count) {
        List<Double> angles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            angles.add(from + width * (i + 0.5) / count);
        }
        return angles;
    }

    /** Stitches of the round below. */
    public int takes() {
        return steps.takes();
    }

    public int makes() {
        return steps.makes();
    }

    /** Angles of every stitch below that is used, in order. */
    public List<Double> below() {
        List<Double> angles = new ArrayList<>();
        passedOver.forEach(skipped -> angles.add(skipped.angle()));
        int last = -1;
        for (ChartSign sign : signs) {
            if (sign.stepIndex() != last) {
                angles.addAll(sign.below());
            }
            last = sign.stepIndex();
        }
        angles.sort(Double::compare);
        return angles;
    }

    /** Signs of one step. */
    public List<ChartSign> signsOf(int stepIndex) {
        return signs.stream().filter(sign -> sign.stepIndex() == stepIndex).toList();
    }
}
