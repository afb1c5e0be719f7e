package roundwright.mistakes.learning;

/**
 * What is believed of a rate: a Beta distribution, as if {@code happened} mistakes had been seen and {@code went} chances had
 * gone well.
 */
public record BetaBelief(double happened, double went) {
    private static final int HALVINGS = 60;
    private static final int MOST_TERMS = 300;

    /** A belief about a mean, as strong as so many chances seen. */
    static BetaBelief about(double mean, double weight) {
        return new BetaBelief(mean * weight, (1 - mean) * weight);
    }

    /** The belief after more was seen; what was seen may be an expectation, so not a whole number. */
    BetaBelief after(double happenings, double chances) {
        return new BetaBelief(happened + happenings, went + Math.max(0, chances - happenings));
    }

    public double mean() {
        return happened / (happened + went);
    }

    /** The rate below which the true one lies with the given probability. */
    public double quantile(double probability) {
        double low = 0;
        double high = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (below(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** P(rate < x): the regularised incomplete beta function. */
    double below(double x) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        double front = Math.exp(logGamma(happened + went)
                - logGamma(happened)
                - logGamma(went)
                + happened * Math.log(x)
                + went * Math.log1p(-x));
        return x < (happened + 1) / (happened + went + 2)
                ? front * fraction(x, happened, went) / happened
                : 1 - front * fraction(1 - x, went, happened) / went;
    }

    /** The continued fraction of the incomplete beta function, by Lentz's method. */
    private static double fraction(double x, double a, double b) {
        double numerator = 1;
        double denominator = 1 / nonZero(1 - (a + b) * x / (a + 1));
        double value = denominator;
        for (int term = 1; term <= MOST_TERMS; term++) {
            double even = term * (b - term) * x / ((a + 2 * term - 1) * (a + 2 * term));
            denominator = 1 / nonZero(1 + even * denominator);
            numerator = nonZero(1 + even / numerator);
            value *= denominator * numerator;
            double odd = -(a + term) * (a + b + term) * x / ((a + 2 * term) * (a + 2 * term + 1));
            denominator = 1 / nonZero(1 + odd * denominator);
            numerator = nonZero(1 + odd / numerator);
            double change = denominator * numerator;
            value *= change;
            if (Math.abs(change - 1) < 1e-14) {
                break;
            }
        }
        return value;
    }

    private static double nonZero(double value) {
        return Math.abs(value) < 1e-300 ? 1e-300 : value;
    }

    /** Stirling's series, after moving the argument up to where it holds to fifteen digits. */
    private static double logGamma(double x) {
        double shift = 0;
        double moved = x;
        while (moved < 15) {
            shift -= Math.log(moved);
            moved++;
        }
        double square = 1 / (moved * moved);
        double series = (1 / 12.0 - square * (1 / 360.0 - square * (1 / 1260.0 - square / 1680.0))) / moved;
        return shift + (moved - 0.5) * Math.log(moved) - moved + 0.5 * Math.log(2 * Math.PI) + series;
    }
}
