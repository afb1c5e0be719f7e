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
 * The stitches a tree takes and makes as a straight line in how often its filling parts are done: a + b·n.
 *
 * <p>{@code dc, (dc, inc) around} takes 1 + 2n and makes 1 + 3n; with 13 stitches below, n = 6. What fills spaces only
 * ("3 tr in each ch sp") is counted apart from what fills stitches, for a round may have both.
 */
final class Linear {
    /** How often each kind of filling part is done. */
    record Fill(long stitches, long spaces, Sides sides) {
        Fill(long stitches, long spaces) {
            this(stitches, spaces, Sides.NONE);
        }

        long of(boolean ofSpaces) {
            return ofSpaces ? spaces : stitches;
        }
    }

    /**
     * Stitches along the sides of a square, each worked on to the next corner.
     *
     * @param all stitches of all sides together
     * @param first stitches up to the first corner, where the round begins along a side
     * @param each stitches of every other side
     */
    record Sides(long all, long first, long each) {
        static final Sides NONE = new Sides(0, 0, 0);

        /** So many stitches parted among sides, of which some stand in no repeat, on a round of so many stitches. */
        static Sides of(long stitches, long sides, boolean begins, long below) {
            if (!begins) {
                long each = stitches / sides;
                return new Sides(each * sides, each, each);
            }
            long whole = below / sides;
            long each = whole * (sides - 1) <= stitches ? whole : stitches / sides;
            return new Sides(stitches, stitches - each * (sides - 1), each);
        }
    }

    /** What a round takes and makes, and how many steps it is when written out. */
    record Total(long takes, long makes, long steps) {}

    /** Corners of what is worked with corners, where nothing tells how many. */
    private static final long SQUARE = 4;

    private static final long FEWEST_CORNERS = 3;
    private static final long MOST_CORNERS = 12;

    private final int[] options;
    /** Chains that can be worked along; -1 where unknown. */
    private long chains;

    private final Amount fixed = new Amount();
    private final Amount perStitches = new Amount();
    private final Amount perSpaces = new Amount();
    private long leave = -1;
    private long before;
    /** Sides of a square worked on to their corners, by where they stand: in no repeat, in all repeats, in what fills spaces. */
    private long loneSides;

    private long sides;
    private long sidesPerSpace;
    private boolean fillsStitches;
    private boolean fillsSpaces;
    /** Something fills the round inside something that fills it: no number of times makes sense of that. */
    private boolean tangled;

    /** Stitches taken and made, spaces worked into, and chains worked along. */
    private static final class Amount {
        long takes;
        long makes;
        long spaces;
        long chains;
        long steps;

        void addStep(long taken, long made, long spacesUsed, long chainsUsed, long times) {
            steps = Math.min(Sums.MOST, steps + times);
            takes = Math.min(Sums.MOST, takes + Sums.times(taken, times));
            makes = Math.min(Sums.MOST, makes + Sums.times(made, times));
            spaces = Math.min(Sums.MOST, spaces + Sums.times(spacesUsed, times));
            chains = Math.min(Sums.MOST, chains + Sums.times(chainsUsed, times));
        }

        void add(Amount more, long times) {
            steps = Math.min(Sums.MOST, steps + Sums.times(more.steps, times));
            takes = Math.min(Sums.MOST, takes + Sums.times(more.takes, times));
            makes = Math.min(Sums.MOST, makes + Sums.times(more.makes, times));
            spaces = Math.min(Sums.MOST, spaces + Sums.times(more.spaces, times));
            chains = Math.min(Sums.MOST, chains + Sums.times(more.chains, times));
        }
    }

    /** A sum on chains that can be worked along, -1 where nobody knows how many. */
    Linear(int[] options, long chains) {
        this.options = options;
        this.chains = chains;
    }

    boolean fills() {
        return fillsStitches || fillsSpaces;
    }

    /** Whether anything goes into spaces of the round below. */
    boolean usesSpaces() {
        return fixed.spaces > 0 || perStitches.spaces > 0 || perSpaces.spaces > 0;
    }

    void add(List<Node> nodes) {
        for (int i = 0; i < nodes.size(); i++) {
            add(nodes.get(i));
        }
    }

    private void add(Node node) {
        if (node instanceof Work work) {
            long made = work.manner() == Manner.CHAIN ? options[Habit.CHAINS.ordinal()] : work.makes();
            addStep(work.takes(), made, work.target(), along(work), work.times());
        } else if (node instanceof Repeat repeat) {
            add(part(repeat.body()), repeat.times());
            add(repeat.cut());
        } else if (node instanceof Together together) {
            Linear body = part(together.body());
            addStep(together.takes(), body.fixed.makes, together.target(), 0, together.times());
        } else if (node instanceof Choice choice) {
            add(choice.options().get(options[choice.habit().ordinal()]));
        } else if (node instanceof Sequence sequence) {
            add(sequence.body());
        }
    }

    /** What one step uses of a chain that is worked along: of steps other than plain ones and increases nobody knows. */
    private long along(Work work) {
        boolean plain = work.manner() == Manner.PLAIN || work.manner() == Manner.INCREASE;
        boolean along = work.target() == Target.FOUNDATION;
        if (work.target() == Target.ONE_CHAIN) {
            fixed.chains++;
        } else if (along && !plain && work.manner() != Manner.STARTING_CHAIN) {
            chains = -1;
        }
        return along && plain ? 1 : 0;
    }

    private Linear part(List<Node> nodes) {
        Linear part = new Linear(options, chains);
        part.add(nodes);
        return part;
    }

    private void addStep(long takes, long makes, Target target, long chainsUsed, Times times) {
        int spaces = target == Target.SPACE ? 1 : 0;
        if (times.equals(Times.TO_CORNER)) {
            tangled |= takes != 1 || makes != 1;
            loneSides++;
            sides++;
        } else if (times.fills()) {
            Amount step = new Amount();
            step.addStep(takes, makes, spaces, chainsUsed, 1);
            fill(step, times);
        } else {
            fixed.addStep(takes, makes, spaces, chainsUsed, times.number());
        }
    }

    private void fill(Amount step, Times times) {
        if (spacesOnly(step.takes, step.spaces)) {
            fillsSpaces = true;
            perSpaces.add(step, 1);
            return;
        }
        fillsStitches = true;
        perStitches.add(step, 1);
        if (times.number() >= 0) {
            leave = times.number();
            before = step.takes > 0 ? fixed.takes : fixed.chains;
        }
    }

    /** Whether what fills the round takes no stitch, only spaces. */
    static boolean spacesOnly(long takes, long spaces) {
        return takes == 0 && spaces > 0;
    }

    private void add(Linear body, Times times) {
        tangled |= body.tangled || times.fills() && body.fills();
        chains = Math.min(chains, body.chains);
        if (times.fills()) {
            tangled |= body.sides > 0 && !spacesOnly(body.fixed.takes, body.fixed.spaces);
            sidesPerSpace += body.sides;
            fill(body.fixed, times);
            return;
        }
        sides = Math.min(Sums.MOST, sides + Sums.times(body.sides, times.number()));
        fixed.add(body.fixed, times.number());
        perStitches.add(body.perStitches, times.number());
        perSpaces.add(body.perSpaces, times.number());
        fillsStitches |= body.fillsStitches;
        fillsSpaces |= body.fillsSpaces;
    }

    /** How often the filling parts are done; null where nothing tells. */
    Fill solve(long below, long spacesBelow, long stated) {
        if (tangled) {
            return null;
        }
        if (sides + sidesPerSpace > 0) {
            return alongSides(below, spacesBelow, stated);
        }
        long stitches = !fillsStitches ? 0 : stitches(below);
        long spaces = !fillsSpaces ? 0 : spaces(spacesBelow);
        if (stitches < 0 && spaces < 0 || stated < 0 && (stitches < 0 || spaces < 0)) {
            return null;
        }
        if (stitches < 0) {
            long rest = stated - fixed.makes - Sums.times(perSpaces.makes, spaces);
            return perStitches.makes == 0 ? null : new Fill(Math.max(0, rest / perStitches.makes), spaces);
        }
        if (spaces < 0) {
            long rest = stated - fixed.makes - Sums.times(perStitches.makes, stitches);
            return perSpaces.makes == 0 ? null : new Fill(stitches, Math.max(0, rest / perSpaces.makes));
        }
        return new Fill(besides(stitches, below, stated), spaces);
    }

    /** Where stitches go on to each corner: all that is left of the round, parted among its sides. */
    private Fill alongSides(long below, long spacesBelow, long stated) {
        long all = below - fixed.takes;
        if (below < 0 || all < 0 || fillsStitches) {
            return null;
        }
        long spaces = !fillsSpaces ? 0 : spacesBelow >= 0 ? spaces(spacesBelow) : corners(stated - all);
        long corners = Math.min(Sums.MOST, sides + Sums.times(sidesPerSpace, spaces));
        return corners == 0 ? null : new Fill(0, spaces, Sides.of(all, corners, loneSides > 0, below));
    }

    /** How many corners there are, told by what is made in them besides the sides; four where that does not tell. */
    private long corners(long made) {
        long inCorners = made - fixed.makes;
        boolean told = perSpaces.makes > 0 && inCorners > 0 && inCorners % perSpaces.makes == 0;
        long corners = told ? inCorners / perSpaces.makes : 0;
        return corners >= FEWEST_CORNERS && corners <= MOST_CORNERS ? corners : SQUARE;
    }

    /** "sc in next sc, sc in next ch-1 sp" round a round whose chains are counted: stitches and spaces are used up together. */
    private long besides(long stitches, long below, long stated) {
        if (perStitches.spaces == 0 || perStitches.makes == 0 || stated < 0 || below < 0) {
            return stitches;
        }
        long times = (stated - fixed.makes) / perStitches.makes;
        long used = fixed.takes + fixed.spaces + Sums.times(perStitches.takes + perStitches.spaces, Math.max(0, times));
        return times > 0 && used == below ? times : stitches;
    }

    /** What the round takes and makes when its filling parts are done so often. */
    Total total(Fill fill) {
        Amount all = new Amount();
        all.add(fixed, 1);
        all.add(perStitches, fill.stitches());
        all.add(perSpaces, fill.spaces());
        all.addStep(1, 1, 0, 0, fill.sides().all());
        return new Total(all.takes, all.makes, all.steps);
    }

    /** Whether something that fills the round finds no room in it. */
    boolean findsNoRoom(Fill fill) {
        return fillsStitches && fill.stitches() == 0 || fillsSpaces && fill.spaces() == 0;
    }

    private long stitches(long below) {
        boolean along = perStitches.takes == 0;
        long room = along ? chains : below;
        long each = along ? perStitches.chains : perStitches.takes;
        if (room < 0 || each == 0) {
            return -1;
        }
        long rest = leave >= 0 ? room - before - leave : room - (along ? fixed.chains : fixed.takes);
        return Math.max(0, rest / each);
    }

    private long spaces(long below) {
        return below < 0 ? -1 : Math.max(0, (below - fixed.spaces) / perSpaces.spaces);
    }
}
