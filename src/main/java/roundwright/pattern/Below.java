package roundwright.pattern;

/**
 * What the round below offers.
 *
 * @param stitches its count; -1 where unknown
 * @param made what it really makes, where that differs from its stated count; -1 where unknown
 * @param spaces chain spaces or gaps between groups in it; -1 where unknown
 * @param chains chains that a line before has made and that are still to be worked along; 0 where there are none
 */
record Below(long stitches, long made, long spaces, int chains) {
    static final Below UNKNOWN = new Below(-1, -1, -1);

    /** The same where a line counts its groups, which go into a space each if nobody knows how many spaces there are. */
    Below of(int groups) {
        return spaces < 0 ? new Below(stitches, made, groups, chains) : this;
    }

    Below(long stitches, long made, long spaces) {
        this(stitches, made, spaces, 0);
    }
}
