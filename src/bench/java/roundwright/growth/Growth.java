package roundwright.growth;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

/** How the time of some work grows with its input: the input is doubled several times, and a power of its size is laid through the times. */
final class Growth {
    private static final int DOUBLINGS = 4;
    private static final int MOST_TRIES = 15;
    private static final int FEWEST_TRIES = 3;
    private static final double ENOUGH_MILLISECONDS = 1_500;

    private Growth() {}

    /** Makes the input of a size, and gives the work on it. */
    interface Work {
        Callable<?> of(int size) throws Exception;
    }

    /**
     * Prints one line: the sizes, the shortest of several times for each in milliseconds of the processor, and the exponent.
     *
     * @param aim the exponent that the work should have: 1 is in proportion, 2 quadratic
     */
    static void print(String name, int first, double aim, Work work) throws Exception {
        double[] sizes = new double[DOUBLINGS + 1];
        double[] times = new double[DOUBLINGS + 1];
        shortest(work.of(first << DOUBLINGS));
        for (int doubled = 0; doubled <= DOUBLINGS; doubled++) {
            sizes[doubled] = first << doubled;
            times[doubled] = shortest(work.of(first << doubled));
        }
        System.out.printf(
                "%-46s %7d to %-7d %-42s exponent %.2f (aim %.1f)%n",
                name, first, first << DOUBLINGS, told(times), exponent(sizes, times), aim);
    }

    private static String told(double[] times) {
        return Arrays.stream(times).mapToObj("%.2f"::formatted).collect(Collectors.joining(", ", "", " ms"));
    }

    private static double shortest(Callable<?> work) throws Exception {
        double best = Double.MAX_VALUE;
        double all = 0;
        for (int tries = 0; tries < MOST_TRIES && (tries < FEWEST_TRIES || all < ENOUGH_MILLISECONDS); tries++) {
            long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.call();
            double took = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) / 1e6;
            best = Math.min(best, took);
            all += took;
        }
        return best;
    }

    /** The slope of the straight line that lies nearest to the logarithms. */
    private static double exponent(double[] sizes, double[] times) {
        double[] x = Arrays.stream(sizes).map(Math::log).toArray();
        double[] y = Arrays.stream(times).map(Math::log).toArray();
        double middleX = Arrays.stream(x).average().orElseThrow();
        double middleY = Arrays.stream(y).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < x.length; i++) {
            above += (x[i] - middleX) * (y[i] - middleY);
            below += (x[i] - middleX) * (x[i] - middleX);
        }
        return above / below;
    }
}
