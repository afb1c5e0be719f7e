package roundwright.mistakes.story;

import java.util.Arrays;

/**
 * What a round can become of one number of stitches below: for every count made, the chance of it, and the kinds of
 * mistakes it takes.
 *
 * <p>Held before the marker was or was not overrun: the six ways of that are put in when asked for.
 */
public final class Landing {
    /** An outcome whose share of its count's chance is less than this is not named; the count's chance still has it. */
    private static final double NAMED = 1e-6;

    private static final int FURTHEST = 3;

    private final int least;
    private final int[] rowStart;
    private final int[] codes;
    private final double[] chances;
    private final double[] ends;
    private final double[] totals;
    private final double[] byTheLine;
    private final Outcomes[] named;

    Landing(Rows rows, double[] ends) {
        this.least = rows.least();
        this.rowStart = rows.starts();
        this.codes = rows.codes();
        this.chances = rows.chances();
        this.ends = ends;
        this.totals = spread(rowSums(), ends);
        this.byTheLine = spread(rows.byTheLine(), ends);
        this.named = new Outcomes[totals.length];
    }

    /**
     * Kinds and chances of one count made, the likeliest first.
     *
     * @param codes packed kinds
     * @param chances P(count, kinds | stitches below)
     */
    record Outcomes(int[] codes, double[] chances) {
        /** Single precision is enough to put them in order, and lets places and chances be sorted as one number. */
        private Outcomes sorted() {
            long[] order = new long[codes.length];
            for (int entry = 0; entry < order.length; entry++) {
                long falling = ~Float.floatToRawIntBits((float) chances[entry]) & 0xffffffffL;
                order[entry] = falling << 32 | entry;
            }
            Arrays.sort(order);
            int[] sortedCodes = new int[order.length];
            double[] sortedChances = new double[order.length];
            for (int entry = 0; entry < order.length; entry++) {
                sortedCodes[entry] = codes[(int) order[entry]];
                sortedChances[entry] = chances[(int) order[entry]];
            }
            return new Outcomes(sortedCodes, sortedChances);
        }
    }

    private double[] rowSums() {
        double[] sums = new double[rowStart.length - 1];
        for (int row = 0; row < sums.length; row++) {
            for (int entry = rowStart[row]; entry < rowStart[row + 1]; entry++) {
                sums[row] += chances[entry];
            }
        }
        return sums;
    }

    /** Counts from {@code least - 3}, or from 0, on. */
    private double[] spread(double[] sums, double[] shares) {
        double[] spread = new double[least + sums.length + FURTHEST - from()];
        for (int row = 0; row < sums.length; row++) {
            for (int past = -FURTHEST; past <= FURTHEST; past++) {
                spread[Math.max(0, least + row + past) - from()] += sums[row] * shares[past + FURTHEST];
            }
        }
        return spread;
    }

    /** The least count that can be made. */
    public int from() {
        return Math.max(0, least - FURTHEST);
    }

    /** One more than the greatest count that can be made. */
    public int to() {
        return from() + totals.length;
    }

    /** P(made | stitches below). */
    public double chance(int made) {
        int place = made - from();
        return place >= 0 && place < totals.length ? totals[place] : 0;
    }

    /** The part of {@link #chance} in which the line, not the marker, decided where the round ends. */
    public double chanceByTheLine(int made) {
        int place = made - from();
        return place >= 0 && place < totals.length ? byTheLine[place] : 0;
    }

    /** What takes the outcomes of a count one after another and says whether it wants more. */
    public interface Each {
        boolean take(int code, double chance);
    }

    /**
     * Hands out what can lie behind a count made, as packed {@link Kinds} with P(made, kinds | stitches below), the likeliest first.
     */
    public void forEachOutcome(int made, Each each) {
        if (chance(made) == 0) {
            return;
        }
        Outcomes outcomes = outcomes(made);
        for (int entry = 0; entry < outcomes.codes().length; entry++) {
            if (!each.take(outcomes.codes()[entry], outcomes.chances()[entry])) {
                return;
            }
        }
    }

    Outcomes outcomes(int made) {
        int place = made - from();
        if (named[place] == null) {
            named[place] = name(made);
        }
        return named[place];
    }

    private Outcomes name(int made) {
        double smallest = totals[made - from()] * NAMED;
        Tally tally = new Tally();
        for (int row = Math.max(0, made - FURTHEST - least); row < rowStart.length - 1; row++) {
            int before = least + row;
            if (before > made + FURTHEST) {
                break;
            }
            for (int past = -FURTHEST; past <= FURTHEST; past++) {
                if (Math.max(0, before + past) == made && ends[past + FURTHEST] > 0) {
                    add(row, past, smallest, tally);
                }
            }
        }
        return new Outcomes(tally.codes(), tally.chances()).sorted();
    }

    private void add(int row, int past, double smallest, Tally tally) {
        double share = ends[past + FURTHEST];
        int end = past == 0 ? 0 : Kinds.code(past < 0 ? Kind.STOPPED_SHORT : Kind.RAN_PAST);
        for (int entry = rowStart[row]; entry < rowStart[row + 1]; entry++) {
            double chance = chances[entry] * share;
            if (chance > smallest) {
                tally.add(codes[entry] + end, chance);
            }
        }
    }
}
