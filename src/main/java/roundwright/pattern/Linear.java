package roundwright.pattern;

import java.util.List;
import roundwright.notation.Habit;
import roundwright.notation.Node;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Together;
import roundwright.notation.Node.Work;
import roundwright.notation.Times;

/**
 * The stitches a tree takes and makes as a straight line in how often its filling part is done: a + b·n.
 *
 * <p>{@code dc, (dc, inc) around} takes 1 + 2n and makes 1 + 3n; with 13 stitches below, n = 6.
 */
final class Linear {
    private final int[] options;
    private long takes;
    private long takesEach;
    private long makes;
    private long makesEach;
    private long spaces;
    private long spacesEach;
    private long leave = -1;
    private long before;
    private boolean fills;

    Linear(int[] options) {
        this.options = options;
    }

    boolean fills() {
        return fills;
    }

    void add(List<Node> nodes) {
        for (Node node : nodes) {
            add(node);
        }
    }

    private void add(Node node) {
        if (node instanceof Work work) {
            long made = work.manner() == Manner.CHAIN ? options[Habit.CHAINS.ordinal()] : work.makes();
            add(work.takes(), made, work.target() == Target.SPACE ? 1 : 0, work.times());
        } else if (node instanceof Repeat repeat) {
            Linear body = part(repeat.body());
            add(body, repeat.times());
            add(repeat.cut());
        } else if (node instanceof Together together) {
            Linear body = part(together.body());
            add(together.takes(), body.makes, together.target() == Target.SPACE ? 1 : 0, together.times());
        } else if (node instanceof Choice choice) {
            add(choice.options().get(options[choice.habit().ordinal()]));
        } else if (node instanceof Sequence sequence) {
            add(sequence.body());
        }
    }

    private Linear part(List<Node> nodes) {
        Linear part = new Linear(options);
        part.add(nodes);
        return part;
    }

    private void add(long takesOne, long makesOne, long spacesOne, Times times) {
        if (times.fills()) {
            fill(takesOne, makesOne, spacesOne, times);
        } else {
            takes = plus(takes, Sums.times(takesOne, times.number()));
            makes = plus(makes, Sums.times(makesOne, times.number()));
            spaces = plus(spaces, Sums.times(spacesOne, times.number()));
        }
    }

    private void fill(long takesOne, long makesOne, long spacesOne, Times times) {
        fills = true;
        takesEach = plus(takesEach, takesOne);
        makesEach = plus(makesEach, makesOne);
        spacesEach = plus(spacesEach, spacesOne);
        if (times.number() >= 0) {
            leave = times.number();
            before = takes;
        }
    }

    private void add(Linear body, Times times) {
        if (times.fills()) {
            fill(body.takes, body.makes, body.spaces, times);
            return;
        }
        long number = times.number();
        takes = plus(takes, Sums.times(body.takes, number));
        makes = plus(makes, Sums.times(body.makes, number));
        spaces = plus(spaces, Sums.times(body.spaces, number));
        if (body.fills) {
            fills = true;
            takesEach = plus(takesEach, Sums.times(body.takesEach, number));
            makesEach = plus(makesEach, Sums.times(body.makesEach, number));
            spacesEach = plus(spacesEach, Sums.times(body.spacesEach, number));
        }
    }

    private static long plus(long a, long b) {
        return Math.min(Sums.MOST, a + b);
    }

    /** How often what fills the round is done; {@link Resolver#UNKNOWN} where nothing tells. */
    long solve(long below, long spacesBelow, long stated) {
        if (takesEach > 0 && below >= 0) {
            long rest = leave >= 0 ? below - before - leave : below - takes;
            return Math.max(0, rest / takesEach);
        }
        if (takesEach == 0 && spacesEach > 0 && spacesBelow >= 0) {
            return Math.max(0, (spacesBelow - spaces) / spacesEach);
        }
        if (stated >= 0 && makesEach > 0) {
            return Math.max(0, (stated - makes) / makesEach);
        }
        return Resolver.UNKNOWN;
    }
}
