package roundwright.course.planning;

import java.util.Random;

/**
 * What is known of a student's pace: the logarithm of the pace in a session is normal about the student's own mean, with the
 * student's own spread, and both are known only as well as sessions have shown them (a normal-inverse-chi-squared posterior).
 *
 * @param logMean logarithm of the likeliest pace, stitches a minute
 * @param weight how many sessions the mean is worth
 * @param variance likeliest variance of the logarithm from session to session
 * @param freedom how many sessions the variance is worth
 */
public record PaceBelief(double logMean, double weight, double variance, int freedom) {
    /** Students of one group differ in pace by a factor of about 1.5 either way, before anything is seen of them. */
    private static final double WEIGHT_BEFORE = 0.4;

    /** One student's sessions differ by about a quarter either way. */
    private static final double VARIANCE_BEFORE = 0.0625;

    private static final int FREEDOM_BEFORE = 4;

    /**
     * The belief after some sessions.
     *
     * @param groupPace the pace to expect of anyone in the group
     * @param seen the student's pace in each session in which it could be told; may be empty
     */
    public static PaceBelief of(double groupPace, double... seen) {
        double before = Math.log(groupPace);
        int sessions = seen.length;
        double mean = 0;
        for (double pace : seen) {
            mean += Math.log(pace) / sessions;
        }
        double squares = FREEDOM_BEFORE * VARIANCE_BEFORE;
        for (double pace : seen) {
            squares += (Math.log(pace) - mean) * (Math.log(pace) - mean);
        }
        double weight = WEIGHT_BEFORE + sessions;
        squares += WEIGHT_BEFORE * sessions / weight * (mean - before) * (mean - before);
        int freedom = FREEDOM_BEFORE + sessions;
        return new PaceBelief((WEIGHT_BEFORE * before + sessions * mean) / weight, weight, squares / freedom, freedom);
    }

    /** The middle pace, stitches a minute. */
    public double pace() {
        return Math.exp(logMean);
    }

    /** A student who may be the one: a mean and a spread drawn from the belief. */
    Temper draw(Random random) {
        double chiSquared = 0;
        for (int i = 0; i < freedom; i++) {
            double normal = random.nextGaussian();
            chiSquared += normal * normal;
        }
        double drawn = freedom * variance / chiSquared;
        return new Temper(logMean + random.nextGaussian() * Math.sqrt(drawn / weight), Math.sqrt(drawn));
    }

    /** One student's own pace and its spread, both of logarithms. */
    record Temper(double logMean, double spread) {
        double paceOfSession(Random random) {
            return Math.exp(logMean + spread * random.nextGaussian());
        }
    }
}
