package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import roundwright.notation.Habit;
import roundwright.notation.Node;
import roundwright.notation.Terms;
import roundwright.notation.WrittenLine;
import roundwright.notation.WrittenLine.Count;

/** Tries the few ways in which a line can be read and chooses the one that the sums and the writer's habits speak for. */
final class Interpreter {
    /** More combinations of choices than this are not tried in one line. */
    private static final int MOST_WAYS = 96;

    private static final int HABITS = Habit.values().length;
    private static final List<int[]> PLAIN = List.of(new int[HABITS]);
    private static final int MISFIT = 10;

    /** What goes into spaces uses stitches that the sums cannot see. */
    private static final int LOOSE = 2;

    /** A number of groups is no count after all. */
    private static final int SOFT = 3;

    private final Leaning leaning;
    private final Terms terms;

    Interpreter(Leaning leaning, Terms terms) {
        this.leaning = leaning;
        this.terms = terms;
    }

    /** Every way to read the tree, the best first; empty where none can be worked out. */
    List<Interpretation> ways(WrittenLine line, List<Count> counts, Below below) {
        Set<Habit> open = line.open();
        List<Node> tree = spread(line.body(), below);
        List<Interpretation> ways = new ArrayList<>();
        if (tree.isEmpty() && !line.body().isEmpty()) {
            return ways;
        }
        long chains = chains(line, below);
        boolean bridges = open.contains(Habit.CHAINS) && Bridges.in(tree);
        for (int[] options : assignments(open)) {
            if (options[Habit.BARE_LIST.ordinal()] == 0 || below.stitches() >= 0) {
                boolean noChain = below.stitches() >= 0
                        && open.contains(Habit.CHAINS_BELOW)
                        && options[Habit.CHAINS_BELOW.ordinal()] == 0;
                int unlikely = (noChain ? 2 : 0) + (bridges && options[Habit.CHAINS.ordinal()] == 0 ? 2 : 0);
                add(tree, counts, below, chains, options, cost(open, options) + unlikely, ways);
            }
        }
        if (ways.size() > 1) {
            ways.sort((left, right) -> Integer.compare(left.cost(), right.cost()));
        }
        return ways;
    }

    /** The tree with what is spread over the round below worked out for it; empty where it cannot be. */
    private static List<Node> spread(List<Node> tree, Below below) {
        boolean any = false;
        for (Node node : tree) {
            any |= node instanceof Node.Spread;
        }
        if (!any) {
            return tree;
        }
        List<Node> steps = new ArrayList<>();
        for (Node node : tree) {
            List<Node> some = node instanceof Node.Spread spread ? spread.on(below.stitches()) : List.of(node);
            if (some.isEmpty()) {
                return some;
            }
            steps.addAll(some);
        }
        return steps;
    }

    private int cost(Set<Habit> open, int[] options) {
        int cost = 0;
        for (Habit habit : open) {
            cost += leaning.cost(habit, options[habit.ordinal()]);
        }
        return cost;
    }

    /** Chains that the line can work along, its own or those of a line before it; -1 where nobody knows. */
    private static long chains(WrittenLine line, Below below) {
        int made = Math.max(line.chain().made(), below.chains());
        int from = line.chain().from();
        return made == 0 || from == 0 ? -1 : Math.max(0, made - from + 1);
    }

    private void add(
            List<Node> tree,
            List<Count> counts,
            Below below,
            long chains,
            int[] options,
            int cost,
            List<Interpretation> ways) {
        Linear sum = new Linear(options, chains);
        sum.add(tree);
        boolean counted = false;
        for (int i = 0; i < counts.size(); i++) {
            Count count = counts.get(i);
            if (count.sure()
                    || options[Habit.NUMBER_AT_END.ordinal()] == 1
                    || options[Habit.BARE_COUNT.ordinal()] == 1) {
                counted = true;
                add(tryWay(tree, options, sum, below, count.value(), cost + i), ways);
            }
        }
        boolean soft = counts.size() == 1 && counts.get(0).soft();
        if (!counted || soft) {
            Below groups = soft ? below.of(counts.get(0).value()) : below;
            add(tryWay(tree, options, sum, groups, -1, cost + (soft ? SOFT : 0)), ways);
        }
    }

    private static void add(Interpretation way, List<Interpretation> ways) {
        if (way != null) {
            ways.add(way);
        }
    }

    private Interpretation tryWay(List<Node> tree, int[] options, Linear sum, Below below, long stated, int cost) {
        Interpretation first = tryAgainst(tree, options, sum, below.stitches(), below.spaces(), stated, cost);
        boolean fits = first != null && first.fits();
        if (!fits && below.spaces() >= 0 && sum.usesSpaces()) {
            Interpretation other = tryAgainst(tree, options, sum, below.stitches(), -1, stated, cost);
            fits = other != null && other.fits();
            first = fits || first == null ? other : first;
        }
        if (fits || below.made() < 0 || below.made() == below.stitches()) {
            return first;
        }
        Interpretation second = tryAgainst(tree, options, sum, below.made(), below.spaces(), stated, cost);
        return second != null && second.fits() ? second : first;
    }

    private Interpretation tryAgainst(
            List<Node> tree, int[] options, Linear sum, long stitches, long spaces, long stated, int cost) {
        Linear.Fill fill = sum.solve(stitches, spaces, stated);
        if (fill == null) {
            return null;
        }
        Linear.Total total = sum.total(fill);
        boolean loose = total.takes() < stitches && sum.usesSpaces();
        boolean fitsBelow = stitches < 0 || total.takes() == stitches || loose;
        boolean fitsStated = stated < 0 || total.makes() == stated;
        boolean bareMisfit = options[Habit.BARE_LIST.ordinal()] == 1 && !(fitsBelow && fitsStated);
        int misfit = (loose ? LOOSE : 0)
                + (fitsBelow ? 0 : misfit(total.takes() - stitches))
                + (fitsStated ? 0 : misfit(total.makes() - stated))
                + (sum.findsNoRoom(fill) ? 2 * MISFIT : 0)
                + (bareMisfit ? MISFIT - 2 : 0);
        return new Interpretation(tree, options, terms, fill, total, stated, cost + misfit, fitsBelow, fitsStated);
    }

    private static int misfit(long difference) {
        return MISFIT + (int) Math.min(5, Math.abs(difference) / 2);
    }

    private static List<int[]> assignments(Set<Habit> open) {
        if (open.isEmpty()) {
            return PLAIN;
        }
        List<int[]> all = new ArrayList<>();
        all.add(new int[HABITS]);
        for (Habit habit : open) {
            int before = all.size();
            for (int option = 1; option < habit.options() && all.size() < MOST_WAYS; option++) {
                for (int i = 0; i < before; i++) {
                    int[] copy = all.get(i).clone();
                    copy[habit.ordinal()] = option;
                    all.add(copy);
                }
            }
        }
        return all;
    }
}
