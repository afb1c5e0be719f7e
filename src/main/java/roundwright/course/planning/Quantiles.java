package roundwright.course.planning;

import java.util.Arrays;

/** Values of a sample below which a share of it lies. */
public final class Quantiles {
    private Quantiles() {}

    /**
     * The value below which a share of the sample lies, on the straight line between the two values next to it: the 25th
     * percentile of 2, 4, 6, 8, 10 is 4, of 2, 4, 6, 8 it is 3.5.
     *
     * @param sample at least one value, in any order; left as it is
     * @param share from 0 to 1
     */
    public static double of(double[] sample, double share) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
