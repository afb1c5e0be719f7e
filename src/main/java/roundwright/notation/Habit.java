package roundwright.notation;

/**
 * A way of writing that different writers mean differently. Where a line can be read in more than one way, it is one of
 * these that decides; {@code options} is how many ways there are. The first option is the commonest in the trade.
 */
public enum Habit {
    /** "2 dc": one in each of two stitches, or two in one stitch. */
    SMALL_NUMBER(2),
    /** "2 dc in next 2 sts": one in each of the two, or two in each. */
    NUMBER_IN_NEXT(2),
    /** "inc 2": two increases, or two stitches in one. */
    NUMBER_AFTER_INCREASE(2),
    /** "dec 2": one decrease over two stitches, or two decreases. */
    NUMBER_AFTER_DECREASE(2),
    /** "rep from * 5 times": that many times more, or in all. */
    REPEAT_FROM(2),
    /** "dc, inc, repeat 5 times": in all, or that many times more. */
    REPEAT_LIST(2),
    /** "(dc, inc) 5 more times": after the first, or after what was written out before. */
    MORE_TIMES(2),
    /** A starting chain stands apart, or counts as a stitch. */
    STARTING_CHAIN(2),
    /** Three starting chains or more count as a tall stitch, or stand apart. */
    TALL_CHAIN(2),
    /** The last chains of a foundation are nothing, or a first tall stitch. */
    FOUNDATION_COUNTS(2),
    /** "dc in each ch" works along a foundation chain, or into stitches of the round below that are chains. */
    CHAINS_BELOW(2),
    /** "(dc, tr) in each st": both into each, or one after the other until the round is full. */
    GROUP_IN_EACH(2),
    /** "in each loop": in each stitch, or in each space. */
    LOOPS(2),
    /** "dc 2 inc": the number is that of the step after it, or of the one before. */
    NUMBER_BETWEEN(2),
    /** "dc inc": an increase in dc, or a dc and then an increase. */
    NAME_AND_SHAPING(2),
    /** One starting chain stands apart, or counts as a stitch. */
    SINGLE_CHAIN(2),
    /** Chains between stitches are not counted, or are. */
    CHAINS(2),
    /** A list without any repeat is worked once, or until the round is full. */
    BARE_LIST(2),
    /** A bracket without a number is repeated until the round is full, is worked once, or is an aside. */
    BARE_BRACKET(3),
    /** "around" after the last of several steps, or "repeat" after a last step in brackets: for all of them, or for that one. */
    LIST_SCOPE(2),
    /** "x 6" after the last of several steps: for that step alone, or for all of them. */
    SCOPE(2),
    /** A number of stitches at the very end: more steps, or the count. */
    NUMBER_AT_END(2),
    /** "repeat 18", "inc 12" at the very end: how often, or the count. */
    BARE_COUNT(2),
    /** A last slip stitch joins the round, or is a stitch. */
    LAST_SLIP_STITCH(2),
    /** A slip stitch in the course of a round is a stitch, or only a way to move. */
    SLIP_STITCH(2),
    /** "in the same stitch": the one just worked into, or the first of the round. */
    SAME_STITCH(2),
    /** A step in brackets straight after another: what the other means, or a step of its own. */
    ASIDE(2),
    /** "tr3tog in next st": a decrease over so many, or as many legs in one stitch. */
    LEGS_TOGETHER(2),
    /** A number in brackets at the end: the count, or something else. */
    COUNT_IN_BRACKETS(2);

    private final int options;

    Habit(int options) {
        this.options = options;
    }

    public int options() {
        return options;
    }
}
