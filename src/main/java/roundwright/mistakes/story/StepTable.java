package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.List;

/**
 * The steps of one reading with the slips that can happen at each.
 *
 * <p>Slips of one sort change what is used and made alike wherever they happen: a stitch passed over uses one more; a
 * missed increase of two makes one less. So the steps' sums and the mix of slips tell everything.
 */
final class StepTable {
    /** A sort of slip: its kind, the stitches it uses and makes beyond what the step should, and its chance at each step. */
    record Slip(Kind kind, int uses, int makes, double chance) {}

    /** Steps of one shape: the sorts of slips that can happen at them, and the chance of none. */
    private record Shape(int takes, int makes, int[] sorts, double none) {}

    final int steps;
    /** Stitches that the first so many steps use and make when nothing goes wrong; one entry more than steps. */
    final int[] taken;

    final int[] made;
    private final List<Slip> slips = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final int[] shapeOf;
    private final Rates rates;

    StepTable(WrittenRound round, Rates rates) {
        this.rates = rates;
        this.steps = round.steps();
        this.taken = new int[steps + 1];
        this.made = new int[steps + 1];
        this.shapeOf = new int[steps];
        for (int step = 0; step < steps; step++) {
            taken[step + 1] = taken[step] + round.takes(step);
            made[step + 1] = made[step] + round.makes(step);
            shapeOf[step] = shape(round, step);
        }
    }

    private int shape(WrittenRound round, int step) {
        for (int number = 0; number < shapes.size(); number++) {
            Shape shape = shapes.get(number);
            if (shape.takes() == round.takes(step) && shape.makes() == round.makes(step)) {
                return number;
            }
        }
        int[] sorts = sortsAt(round, step).stream().mapToInt(this::sort).toArray();
        double none = 1;
        for (int sort : sorts) {
            none -= slips.get(sort).chance();
        }
        shapes.add(new Shape(round.takes(step), round.makes(step), sorts, none));
        return shapes.size() - 1;
    }

    private List<Slip> sortsAt(WrittenRound round, int step) {
        List<Slip> possible = new ArrayList<>();
        int takes = round.takes(step);
        if (takes >= 1) {
            possible.add(slip(Kind.SKIPPED, 1, 0));
            possible.add(slip(Kind.WORKED_TWICE, -1, 0));
        }
        if (round.increases(step)) {
            possible.add(slip(Kind.INCREASE_MISSED, 1 - takes, 1 - round.makes(step)));
        }
        if (round.decreases(step)) {
            possible.add(slip(Kind.DECREASE_MISSED, 1 - takes, 1 - round.makes(step)));
        }
        return possible;
    }

    private Slip slip(Kind kind, int uses, int makes) {
        return new Slip(kind, uses, makes, rates.rate(kind));
    }

    private int sort(Slip slip) {
        if (!slips.contains(slip)) {
            slips.add(slip);
        }
        return slips.indexOf(slip);
    }

    List<Slip> slips() {
        return slips;
    }

    int takes(int step) {
        return taken[step + 1] - taken[step];
    }

    /** Numbers of the sorts of slips that can happen at the step. */
    int[] sorts(int step) {
        return shapes.get(shapeOf[step]).sorts();
    }

    /** The chance that the step goes right. */
    double none(int step) {
        return shapes.get(shapeOf[step]).none();
    }

    /** The fewest slips such that more happen in a round with less than the chance {@code spare}. */
    int mostSlips(double spare) {
        double[] chances = new double[Kinds.MOST_SLIPS + 1];
        chances[0] = 1;
        for (int step = 0; step < steps; step++) {
            double none = none(step);
            for (int count = chances.length - 1; count > 0; count--) {
                chances[count] = chances[count] * none + chances[count - 1] * (1 - none);
            }
            chances[0] *= none;
        }
        double more = 1 - chances[0];
        int most = 0;
        while (most < Kinds.MOST_SLIPS && more > spare) {
            most++;
            more -= chances[most];
        }
        return most;
    }
}
