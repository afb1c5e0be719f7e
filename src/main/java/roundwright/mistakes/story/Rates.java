package roundwright.mistakes.story;

import java.util.Arrays;

/**
 * How often each kind of mistake happens, and the habit of letting the marker decide where a round ends.
 *
 * <p>A rate is a probability per chance: per step for {@link Kind#SKIPPED}, per increase for {@link Kind#INCREASE_MISSED},
 * and so on by {@link Kind#per()}.
 */
public final class Rates {
    /** What is taken to hold before any report came in. */
    public static final Rates STORY = new Rates(
            Arrays.stream(Kind.values()).mapToDouble(Kind::startingRate).toArray(), 0.85);

    /** Of those who stop short or run past: 1, 2, 3 stitches. */
    private static final double[] BY_STITCHES = {4 / 7.0, 2 / 7.0, 1 / 7.0};

    /** Of those who miscount: by 1, by 2, by 10, half to each side. */
    private static final double BY_ONE = 15 / 40.0;

    private static final double BY_TWO = 3 / 40.0;
    private static final double BY_TEN = 2 / 40.0;

    private final double[] rates;
    private final double toMarker;

    private Rates(double[] rates, double toMarker) {
        this.rates = rates;
        this.toMarker = toMarker;
        check();
    }

    private void check() {
        for (double rate : rates) {
            requireChance(rate);
        }
        requireChance(toMarker);
        requireChance(rate(Kind.SKIPPED)
                + rate(Kind.WORKED_TWICE)
                + Math.max(rate(Kind.INCREASE_MISSED), rate(Kind.DECREASE_MISSED)));
        requireChance(Arrays.stream(rates, Kind.REPEAT_SHORT.ordinal(), Kind.WRONG_LINE.ordinal())
                .sum());
        requireChance(rate(Kind.STOPPED_SHORT) + rate(Kind.RAN_PAST));
    }

    private static void requireChance(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("the chances of a choice come to " + chance);
        }
    }

    /** The chance of a mistake of the kind, at each opportunity. */
    public double rate(Kind kind) {
        return rates[kind.ordinal()];
    }

    /** The chance that the marker, not the line, decides where a round ends. */
    public double toMarker() {
        return toMarker;
    }

    /** The same with another rate for one kind. */
    public Rates with(Kind kind, double rate) {
        double[] changed = rates.clone();
        changed[kind.ordinal()] = rate;
        return new Rates(changed, toMarker);
    }

    /** The same with another habit at the marker. */
    public Rates withToMarker(double chance) {
        return new Rates(rates.clone(), chance);
    }

    /** The chance to end {@code stitches} past the marker: before it where negative, on it where 0. */
    double ends(int stitches) {
        if (stitches == 0) {
            return 1 - rate(Kind.STOPPED_SHORT) - rate(Kind.RAN_PAST);
        }
        double share = Math.abs(stitches) <= 3 ? BY_STITCHES[Math.abs(stitches) - 1] : 0;
        return share * rate(stitches < 0 ? Kind.STOPPED_SHORT : Kind.RAN_PAST);
    }

    /** The chance to report {@code error} stitches more than were made. */
    public double reports(int error) {
        double miscounted = rate(Kind.MISCOUNTED);
        return switch (Math.abs(error)) {
            case 0 -> 1 - miscounted;
            case 1 -> miscounted * BY_ONE;
            case 2 -> miscounted * BY_TWO;
            case 10 -> miscounted * BY_TEN;
            default -> 0;
        };
    }

    /** The chance that a first round has {@code error} stitches more than written. */
    double starts(int error) {
        double wrong = rate(Kind.WRONG_START);
        return switch (Math.abs(error)) {
            case 0 -> 1 - wrong;
            case 1 -> wrong * 3 / 8;
            case 2 -> wrong / 8;
            default -> 0;
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rates same && Arrays.equals(rates, same.rates) && toMarker == same.toMarker;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(rates) + Double.hashCode(toMarker);
    }

    @Override
    public String toString() {
        return "Rates" + Arrays.toString(rates) + " to marker " + toMarker;
    }
}
