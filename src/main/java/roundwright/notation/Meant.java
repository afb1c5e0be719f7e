package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** What a step, its number and its place mean together: the node, with a choice where writers differ. */
final class Meant {
    /** Numbers up to this one may say how many go into one stitch; more never do without a place. */
    private static final int SMALL = 3;

    private final Reading line;
    private final Work unit;
    private final int number;
    private final boolean times;
    private final boolean after;
    private final Place place;

    Meant(Reading line, Work unit, int number, boolean times, boolean after, Place place) {
        this.line = line;
        this.unit = unit;
        this.number = number;
        this.times = times;
        this.after = after;
        this.place = place;
    }

    Node node() {
        if (place != null
                && place.chain
                && !line.foundation
                && !line.ring
                && !place.fromHook
                && place.target == Target.NEXT) {
            place.chain = false;
            Node below = node();
            line.foundation = true;
            Node foundation = node();
            line.foundation = false;
            return choice(Habit.CHAINS_BELOW, foundation, below);
        }
        Node node = switch (unit.manner()) {
            case CHAIN -> unit.times(Times.of(Math.max(1, number)));
            case PLAIN -> plain();
            default -> shaped();
        };
        line.begun |= unit.manner() != Manner.CHAIN;
        return node;
    }

    /** An increase, decrease or textured stitch: the number says how many of them. */
    private Node shaped() {
        Work step = placed();
        if (oneStitch() && number == 0 && step.target() == Target.NEXT) {
            return legs(step);
        }
        boolean several = unit.manner() == Node.Manner.GROUP && unit.makes() == 1 && number > 1 && !after && !times;
        if (several && place != null && place.number == 0 && (place.next && !place.plural || place.each)) {
            Work many = (Work) increase(number, 1);
            return place.fills() ? many.times(place.times()) : many;
        }
        if (place != null && place.everyNth > 0) {
            return place.everyNth == 1 ? step.times(Times.FULL) : everyNth(step);
        }
        if (place != null && place.fills() && place.number == 0) {
            return step.times(unit.takes() > 1 ? Times.FULL : place.times());
        }
        if (number == 0) {
            int of = place == null || place.number == 0 ? 1 : place.number;
            return step.times(Times.of(unit.takes() > 1 ? Math.max(1, of / unit.takes()) : of));
        }
        if (unit.manner() == Manner.INCREASE && after && !times && number > 1) {
            return choice(Habit.NUMBER_AFTER_INCREASE, step.times(Times.of(number)), increase(number, 1));
        }
        if (unit.takes() > 1 && after && !times) {
            Work over = new Work(
                    step.span(),
                    step.manner(),
                    step.stitch(),
                    number,
                    1,
                    Times.ONCE,
                    step.hold(),
                    step.target(),
                    step.own());
            Node many = step.times(Times.of(number));
            return number < 2 || number > 4 ? many : choice(Habit.NUMBER_AFTER_DECREASE, over, many);
        }
        return step.times(Times.of(number));
    }

    /** Whether the place is one stitch and no more. */
    private boolean oneStitch() {
        boolean one = place != null && (place.next || place.same) && place.number == 0 && !place.plural;
        return one && unit.takes() > 1 && !place.fills() && place.everyNth == 0;
    }

    /** "tr3tog in next st": legs in that stitch, or a decrease whose first stitch that is, as most mean it of short stitches. */
    private Node legs(Work decrease) {
        Work cluster =
                new Work(unit.span(), Manner.GROUP, StitchName.CLUSTER, 1, 1, Times.ONCE, unit.hold(), Target.NEXT, "");
        boolean few = unit.takes() == 2 && !place.same;
        return few ? choice(Habit.LEGS_TOGETHER, decrease, cluster) : choice(Habit.LEGS_TOGETHER, cluster, decrease);
    }

    private Work placed() {
        if (place != null && place.loop && unit.manner() != Manner.PLAIN) {
            place.target = Target.NEXT;
        }
        if (place == null) {
            return line.ring ? unit.in(Target.RING, 0) : line.foundation ? unit.in(Target.FOUNDATION, 0) : unit;
        }
        if (place.same && line.begun) {
            return unit.in(Target.SAME, 0);
        }
        if (place.layers || place.pairs) {
            return unit.in(Target.NEXT, 2 * unit.takes());
        }
        return switch (place.target) {
            case SPACE -> unit.in(Target.SPACE, 0);
            case RING -> unit.in(Target.RING, 0);
            default -> line.foundation ? unit.in(Target.FOUNDATION, 0) : unit;
        };
    }

    private Node plain() {
        if (place == null) {
            return unplaced();
        }
        if (place.fromChain) {
            int rest = Math.max(1, line.chains - place.ordinal + 1);
            return unit.in(Target.FOUNDATION, 0).times(Times.of(number > 0 && !place.each ? number : rest));
        }
        boolean often = times && (number > SMALL || place.number == number && !place.each) && !place.fromHook;
        int each = often && place.target != Target.RING ? 1 : Math.max(1, number);
        if (place.everyNth > 1 && each > 1) {
            return everyNth(increase(each, 1));
        }
        if (place.loop && place.target == Target.SPACE) {
            return loops(each);
        }
        if (place.fills() && place.number == 0 && place.ordinal == 0 && !place.same && place.target != Target.RING) {
            return fill(each);
        }
        if (place.fromHook || place.target == Target.RING || place.target == Target.SPACE) {
            return into(each);
        }
        if (place.same || place.first && !line.begun && (line.openStart || line.startCounts) && place.number == 0) {
            return same(each);
        }
        if (place.otherSide) {
            return placed().times(Times.of(Math.max(each, place.number)));
        }
        if (often && number > 1) {
            return placed().times(Times.of(number));
        }
        return inStitches(each);
    }

    private Node unplaced() {
        Work step = placed();
        if (number > 1
                && number <= SMALL
                && !after
                && !times
                && step.target() == Target.NEXT
                && unit.stitch() != StitchName.SLIP) {
            return choice(Habit.SMALL_NUMBER, step.times(Times.of(number)), increase(number, 1));
        }
        return step.times(Times.of(Math.max(1, number)));
    }

    /** "in each loop": some mean the stitch, some the space. */
    private Node loops(int each) {
        if (!line.begun && !place.each && !place.next && !place.fills()) {
            place.target = Target.RING;
            return into(each);
        }
        Node space = place.fills() ? fill(each) : into(each);
        place.target = Target.NEXT;
        Node stitch = place.fills() ? fill(each) : inStitches(each);
        return choice(Habit.LOOPS, stitch, space);
    }

    private Node fill(int each) {
        line.lastEach = each;
        if (place.chain && line.ringChains > 0 && !line.begun) {
            return increase(unit.in(Target.RING, 0), each, line.ringChains);
        }
        Work step = each == 1 ? placed() : (Work) increase(each, 1);
        if (place.alsoSpaces) {
            Work spaces = unit.in(Target.SPACE, 0).times(Times.FULL);
            return new Node.Sequence(unit.span(), List.of(step.times(place.times()), spaces));
        }
        return step.times(place.times());
    }

    private Node into(int each) {
        if (place.fromHook && unit.stitch() == StitchName.SLIP && line.begun) {
            return new Node.Note(unit.span(), Feature.OTHER);
        }
        if (place.same && line.begun && place.target == Target.SPACE) {
            return unit.in(Target.SAME, 0).times(Times.of(each));
        }
        Target target = place.fromHook ? Target.ONE_CHAIN : place.target;
        line.from = place.fromHook && !line.begun ? place.ordinal : line.from;
        line.ring |= target == Target.RING;
        line.foundation |= place.fromHook;
        if (target == Target.RING && number == 0 && !line.counts.isEmpty()) {
            return unit.in(target, 0).times(Times.FULL);
        }
        if (target == Target.SPACE && (each > 1 || place.number > 1)) {
            return increase(unit.in(target, 0), each, Math.max(1, place.number));
        }
        Work worked = unit.in(target, 0).times(Times.of(each));
        return skipsChains() ? standing(worked) : worked;
    }

    /** "11 dc in 4th ch from hook", "dc in 4th ch from hook and in each ch across" of a chain whose last chains are not settled yet. */
    private boolean skipsChains() {
        return place.fromHook
                && !line.begun
                && StartReader.standsTall(place.ordinal)
                && !StartReader.standsTall(line.chains);
    }

    /** The chains that are passed over may stand for a first stitch. */
    private Node standing(Work worked) {
        Node first = StartReader.standing(unit.span());
        return choice(Habit.FOUNDATION_COUNTS, worked, new Node.Sequence(unit.span(), List.of(first, worked)));
    }

    /** The stitch just worked into, or the first of the round: which, hangs on whether a starting chain stands in it. */
    private Node same(int each) {
        line.lastEach = each;
        Node into = unit.in(Target.SAME, 0).times(Times.of(each));
        if (line.begun) {
            return each > 1 && !place.asJoin ? choice(Habit.SAME_STITCH, into, increase(unit, each, 1)) : into;
        }
        Node first = each == 1 ? unit : increase(each, 1);
        if (line.startCounts) {
            return into;
        }
        return line.openStart ? choice(line.startHabit, first, into) : first;
    }

    /** "in every third st": plain stitches up to it, then this, until the round is full. */
    private Node everyNth(Node shaped) {
        Work plain = new Work(
                unit.span(),
                Manner.PLAIN,
                unit.stitch(),
                1,
                1,
                Times.of(place.everyNth - 1),
                unit.hold(),
                Target.NEXT,
                "");
        return new Node.Repeat(unit.span(), List.of(plain, shaped), Times.FULL, List.of());
    }

    /** "N in next M sts": M stitches with one or N in each. */
    private Node inStitches(int each) {
        int stitches = Math.max(1, place.number);
        boolean torn = place.each && place.next && !place.noun && place.number == 0;
        if (torn) {
            line.hole(unit.span());
        } else if (each == 1 && number == 0 && place.plural && place.number == 0 && place.next) {
            line.doubt(unit.span());
        }
        if (each == 1) {
            return placed().times(Times.of(stitches));
        }
        if (place.layers) {
            return placed().times(Times.of(each));
        }
        boolean along = place.plural || place.chainNamed && place.ordinal == 0 && !place.next && line.chains == 0;
        if (place.number == 0 && along && !place.each) {
            return choice(Habit.NUMBER_IN_NEXT, placed().times(Times.of(each)), increase(each, 1));
        }
        if (place.each || each != stitches) {
            return increase(each, stitches);
        }
        return choice(Habit.NUMBER_IN_NEXT, placed().times(Times.of(each)), increase(each, stitches));
    }

    private Node increase(int makes, int stitches) {
        return increase(placed(), makes, stitches);
    }

    private static Node increase(Work step, int makes, int stitches) {
        return new Work(
                step.span(),
                Manner.INCREASE,
                step.stitch(),
                step.takes(),
                makes,
                Times.of(stitches),
                step.hold(),
                step.target(),
                step.own());
    }

    private Node choice(Habit habit, Node first, Node second) {
        return new Choice(unit.span(), habit, List.of(first, second));
    }
}
