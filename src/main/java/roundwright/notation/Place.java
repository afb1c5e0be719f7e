package roundwright.notation;

import roundwright.notation.Node.Target;

/** Where a stitch is worked, as its words say: "in each of the next 5 sts" is (number 5, each). */
final class Place {
    /** Stitches named; 0 where none is. */
    int number;
    /** A place in an order ("2nd ch from hook"); 0 where none is. */
    int ordinal;

    boolean each;
    boolean next;
    boolean same;
    /** "in every other st" is 2, "in every third st" is 3; 0 where every one is meant. */
    int everyNth;

    boolean asJoin;
    boolean last;
    boolean first;
    boolean remaining;
    boolean noun;
    boolean plural;
    /** Goes on until the round is full. */
    boolean around;
    /** Stitches to leave at the end of the round; -1 where none are named. */
    int leave = -1;

    /** Goes on to the next corner. */
    boolean toCorner;

    boolean fromHook;
    /** Along the chain from one of its chains on ("from the 2nd ch"). */
    boolean fromChain;
    /** Chains are what it is worked into. */
    boolean chain;
    /** A chain is named, whether or not it is the line's own. */
    boolean chainNamed;
    /** A loop, which some call a stitch and some a space. */
    boolean loop;

    boolean otherSide;
    /** The chain spaces between the stitches as well. */
    boolean alsoSpaces;
    /** Through two layers at once: a stitch of each is used. */
    boolean layers;
    /** The stitches named are pairs that were worked into one stitch: V-stitches. */
    boolean pairs;

    boolean together;
    boolean between;
    boolean top;
    Target target = Target.NEXT;
    Hold hold = Hold.BOTH;

    /** Whether it says how many stitches of the round below there are to be worked into. */
    boolean fills() {
        return around || toCorner || leave >= 0 || (each || remaining) && number == 0 && !same;
    }

    /** Whether it says nothing at all. */
    boolean empty() {
        return hold == Hold.BOTH
                && !noun
                && !next
                && !each
                && !same
                && !first
                && !last
                && !remaining
                && !fills()
                && number == 0
                && ordinal == 0
                && !fromHook
                && !otherSide
                && target == Target.NEXT;
    }

    /** Whether it only says which loops: "sc 6 in FLO". */
    boolean holdOnly() {
        return hold != Hold.BOTH && !noun && !next && !each && !same && !fills() && number == 0;
    }

    Times times() {
        return toCorner ? Times.TO_CORNER : leave >= 0 ? Times.toLast(leave) : Times.FULL;
    }
}
