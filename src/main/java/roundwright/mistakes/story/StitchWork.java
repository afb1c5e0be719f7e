package roundwright.mistakes.story;

import java.util.List;

/**
 * The chances of every mix of slips while one reading of a line is worked stitch by stitch.
 *
 * <p>While no mix can have come near the marker, the number of stitches below does not matter: those chances are kept at
 * every eighth step and shared by all numbers. From there the last stitches are worked for the number at hand.
 */
final class StitchWork {
    private static final int KEPT_EVERY = 8;
    /** More mixes than this are not followed, however likely: a line of a dozen shapes would else take seconds. */
    private static final int MOST_MIXES = 6000;

    private final StepTable table;
    private final Mixes mixes;
    private final double[][] kept;
    private final double[] finished;
    private final int slipsFollowed;
    private final int[] uses;
    private final int[] makes;
    private final int[] codes;
    private final Growth growth;
    private int fewest;
    private int mostMore;

    /** How far the stitches made can run ahead of the stitches used, from each step on. */
    private record Growth(int[] least, int[] most) {}

    /** Where a mix of slips comes to rest. */
    interface Landings {
        void add(int mix, int made, double chance);
    }

    /** Works the reading so that what is left out happens with less than the chance {@code spare}. */
    StitchWork(WrittenRound round, Rates rates, double spare) {
        this.table = new StepTable(round, rates);
        List<StepTable.Slip> slips = table.slips();
        this.slipsFollowed = followed(slips.size(), table.mostSlips(spare));
        this.mixes = Mixes.of(slips.size(), slipsFollowed);
        this.uses = new int[mixes.size()];
        this.makes = new int[mixes.size()];
        this.codes = new int[mixes.size()];
        for (int mix = 1; mix < mixes.size(); mix++) {
            StepTable.Slip slip = slips.get(mixes.last(mix));
            uses[mix] = uses[mixes.before(mix)] + slip.uses();
            makes[mix] = makes[mixes.before(mix)] + slip.makes();
            codes[mix] = codes[mixes.before(mix)] + Kinds.code(slip.kind());
            fewest = Math.min(fewest, makes[mix] - Math.max(uses[mix], 0));
            mostMore = Math.max(mostMore, makes[mix] - Math.min(uses[mix], 0));
        }
        this.kept = new double[table.steps / KEPT_EVERY + 1][];
        this.finished = workFreely();
        this.growth = growth();
    }

    private static int followed(int sorts, int wanted) {
        int followed = Math.max(wanted, 1);
        while (followed > 1 && combinations(sorts + followed, sorts) > MOST_MIXES) {
            followed--;
        }
        return followed;
    }

    private static double combinations(int of, int chosen) {
        double number = 1;
        for (int place = 1; place <= chosen; place++) {
            number = number * (of - chosen + place) / place;
        }
        return number;
    }

    /** The whole line with no marker in the way. */
    private double[] workFreely() {
        double[] chances = new double[mixes.size()];
        chances[0] = 1;
        for (int step = 0; step < table.steps; step++) {
            if (step % KEPT_EVERY == 0) {
                kept[step / KEPT_EVERY] = chances.clone();
            }
            free(step, chances);
        }
        if (table.steps % KEPT_EVERY == 0) {
            kept[table.steps / KEPT_EVERY] = chances.clone();
        }
        return chances;
    }

    /** Larger mixes first: what a mix hands on must not be handed on again in the same step. */
    private void free(int step, double[] chances) {
        int[] sorts = table.sorts(step);
        double none = table.none(step);
        for (int mix = chances.length - 1; mix >= 0; mix--) {
            double chance = chances[mix];
            for (int sort : sorts) {
                int more = mixes.with(mix, sort);
                if (more >= 0) {
                    chances[more] += chance * table.slips().get(sort).chance();
                }
            }
            chances[mix] = chance * none;
        }
    }

    private Growth growth() {
        int[] least = new int[table.steps + 1];
        int[] most = new int[table.steps + 1];
        for (int step = table.steps; step >= 0; step--) {
            int here = table.made[step] - table.taken[step];
            least[step] = step == table.steps ? here : Math.min(here, least[step + 1]);
            most[step] = step == table.steps ? here : Math.max(here, most[step + 1]);
        }
        return new Growth(least, most);
    }

    int mixes() {
        return mixes.size();
    }

    /** The packed kinds of a mix. */
    int code(int mix) {
        return codes[mix];
    }

    /** The line is worked to its end, wherever the marker is. */
    void byTheLine(Landings landings) {
        for (int mix = 0; mix < finished.length; mix++) {
            landings.add(mix, table.made[table.steps] + makes[mix], finished[mix]);
        }
    }

    /** The marker decides: {@code below} stitches are used, no more and no fewer. */
    void toTheMarker(int below, Landings landings) {
        int step = firstNearMarker(below) / KEPT_EVERY * KEPT_EVERY;
        double[] chances = kept[step / KEPT_EVERY].clone();
        int left = chances.length;
        for (; left > 0; step++) {
            left = nearMarker(step, below, chances, landings, left);
        }
    }

    /** The first step at which some mix that is followed may find too few stitches. */
    private int firstNearMarker(int below) {
        int from = 0;
        int to = table.steps;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (table.taken[middle + 1] + slipsFollowed + 1 <= below) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    /** One step, in which mixes may come to rest; returns the number below which mixes are still at work. */
    private int nearMarker(int step, int below, double[] chances, Landings landings, int upTo) {
        boolean over = step == table.steps;
        boolean needsStitch = !over && table.takes(step) > 0;
        for (int mix = upTo - 1; mix >= 0; mix--) {
            double chance = chances[mix];
            int left = below - table.taken[step] - uses[mix];
            if (chance != 0 && (over || needsStitch && left <= 0)) {
                landings.add(mix, table.made[step] + makes[mix] + left, chance);
                chances[mix] = 0;
            } else if (chance != 0) {
                workStep(step, mix, left, chances, landings);
            }
        }
        return over ? 0 : stillAtWork(chances);
    }

    private static int stillAtWork(double[] chances) {
        int number = chances.length;
        while (number > 0 && chances[number - 1] == 0) {
            number--;
        }
        return number;
    }

    private void workStep(int step, int mix, int left, double[] chances, Landings landings) {
        int made = table.made[step] + makes[mix] + left;
        double chance = chances[mix];
        int takes = table.takes(step);
        for (int sort : table.sorts(step)) {
            int more = mixes.with(mix, sort);
            if (more >= 0) {
                StepTable.Slip slip = table.slips().get(sort);
                if (takes + slip.uses() <= left) {
                    chances[more] += chance * slip.chance();
                } else {
                    landings.add(more, made, chance * slip.chance());
                }
            }
        }
        chances[mix] = takes <= left ? chance * table.none(step) : 0;
        if (takes > left) {
            landings.add(mix, made, chance * table.none(step));
        }
    }

    /** No mix makes fewer stitches of so many below. */
    int leastMade(int below) {
        int from = firstNearMarker(below) / KEPT_EVERY * KEPT_EVERY;
        return Math.min(below + growth.least()[from], table.made[table.steps]) + fewest;
    }

    /** No mix makes more stitches of so many below. */
    int mostMade(int below) {
        int from = firstNearMarker(below) / KEPT_EVERY * KEPT_EVERY;
        return Math.max(below + growth.most()[from], table.made[table.steps]) + mostMore;
    }
}
