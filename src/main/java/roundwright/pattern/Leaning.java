package roundwright.pattern;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import roundwright.notation.Habit;
import roundwright.notation.WrittenLine;

/** How far a writer leans to each way of reading: the trade's usage, then what this writer's sums have shown. */
final class Leaning {
    /** What it costs to read against what a writer has shown. */
    private static final int AGAINST = 12;

    /** The same where only one line has shown it. */
    private static final int AGAINST_ONE = 5;

    /** The same where many have, and none otherwise: a line that needs it is more likely a slip. */
    private static final int NEVER = 30;

    /** What is said outright weighs as much as several lines that show it. */
    private static final int SAID = 2;

    /** More than any sum that does not fit: one chain is no stitch unless the writer says so. */
    private static final int ONLY_WHERE_SHOWN = 100;

    private static final int OVERRULED = 1000;

    private static final Habit[] HABITS = Habit.values();

    /** The costs of the trade's usage. */
    private static final int[][] USUAL = new int[HABITS.length][];

    static {
        for (Habit habit : HABITS) {
            USUAL[habit.ordinal()] = usual(habit);
        }
    }

    /** How often each option was shown, of the habits that were. */
    private final int[][] shown = new int[HABITS.length][];

    private final int[][] cost = USUAL.clone();

    /** So many rounds show a habit that no writer has by mistake. */
    private static final int THROUGHOUT = 3;

    private boolean undecided;
    private int chainsApart;
    private int chainsCounted;

    Leaning(Habits habits) {
        for (Map.Entry<Habit, Integer> overruled : habits.overruled().entrySet()) {
            int[] costs = new int[overruled.getKey().options()];
            Arrays.fill(costs, OVERRULED);
            costs[overruled.getValue()] = 0;
            cost[overruled.getKey().ordinal()] = costs;
        }
    }

    private int[] shown(Habit habit) {
        int[] times = shown[habit.ordinal()];
        return times == null ? new int[habit.options()] : times;
    }

    private void add(Habit habit, int option, int times) {
        shown[habit.ordinal()] = shown(habit);
        shown[habit.ordinal()][option] += times;
    }

    private static int[] usual(Habit habit) {
        return switch (habit) {
            case SMALL_NUMBER -> new int[] {0, 2};
            case NUMBER_IN_NEXT -> new int[] {0, 1};
            case SINGLE_CHAIN -> new int[] {0, ONLY_WHERE_SHOWN};
            case TALL_CHAIN -> new int[] {1, 0};
            case NAME_AND_SHAPING -> new int[] {0, 1};
            case NUMBER_AFTER_INCREASE -> new int[] {0, 2};
            case NUMBER_AFTER_DECREASE -> new int[] {1, 0};
            case BARE_LIST -> new int[] {0, 3};
            case BARE_BRACKET -> new int[] {0, 1, 2};
            case SCOPE -> new int[] {0, 1};
            case NUMBER_AT_END -> new int[] {1, 0};
            default -> {
                int[] rising = new int[habit.options()];
                for (int i = 1; i < rising.length; i++) {
                    rising[i] = i;
                }
                yield rising;
            }
        };
    }

    int cost(Habit habit, int option) {
        return cost[habit.ordinal()][option];
    }

    /** What decides for a habit in a line whose sums are known, or not. */
    Decision.Because because(Habit habit, boolean sumsKnown) {
        int[] costs = cost[habit.ordinal()];
        for (int option = 0; option < costs.length; option++) {
            if (costs[option] >= OVERRULED) {
                return Decision.Because.OVERRULED;
            }
        }
        if (sumsKnown) {
            return Decision.Because.SUMS;
        }
        for (int times : shown(habit)) {
            if (times > 0) {
                return Decision.Because.WRITER;
            }
        }
        return Decision.Because.USAGE;
    }

    /** A line has been read; where its sums do not decide, what the writer's other lines show will weigh on it. */
    void seen(WrittenLine line, boolean decided) {
        undecided |= !decided && !line.open().isEmpty();
    }

    /** Whether any line hangs on what the others show. */
    boolean undecided() {
        return undecided;
    }

    /** A round with a single starting chain has come out right with the chain apart, or would only as a stitch. */
    void single(boolean apart) {
        chainsApart += apart ? 1 : 0;
        chainsCounted += apart ? 0 : 1;
        undecided |= countsThroughout();
    }

    /** Whether every round of a page needs its single starting chain as a stitch: then its writer means it, said or not. */
    private boolean countsThroughout() {
        return chainsApart == 0 && chainsCounted >= THROUGHOUT;
    }

    /** A line's sums have shown which option its writer means. */
    void show(Habit habit, int option) {
        add(habit, option, 1);
    }

    /** The writer says outright which option is meant. */
    void say(Habit habit, int option) {
        add(habit, option, SAID);
    }

    /** Lets what was shown weigh on every line. */
    Set<Habit> settle() {
        Set<Habit> changed = EnumSet.noneOf(Habit.class);
        if (countsThroughout()) {
            show(Habit.SINGLE_CHAIN, 1);
        }
        for (Habit habit : HABITS) {
            int[] seen = shown(habit);
            int most = 0;
            for (int option = 1; option < seen.length; option++) {
                most = seen[option] > seen[most] ? option : most;
            }
            if (seen[most] > 0 && cost[habit.ordinal()][most] < OVERRULED) {
                lean(habit, most, seen);
                changed.add(habit);
            }
        }
        return changed;
    }

    private void lean(Habit habit, int most, int[] seen) {
        int[] costs = cost[habit.ordinal()].clone();
        cost[habit.ordinal()] = costs;
        for (int option = 0; option < costs.length; option++) {
            int never = seen[most] > THROUGHOUT ? NEVER : seen[most] > 1 ? AGAINST : AGAINST_ONE;
            int against = seen[option] > 0 ? 2 : never;
            costs[option] = option == most ? 0 : Math.min(OVERRULED, costs[option] + against);
        }
    }
}
