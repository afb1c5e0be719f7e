package roundwright.pattern;

/**
 * What the round below offers.
 *
 * @param stitches its count; -1 where unknown
 * @param made what it really makes, where that differs from its stated count; -1 where unknown
 * @param spaces chain spaces or gaps between groups in it; -1 where unknown
 */
record Below(long stitches, long made, long spaces) {
    static final Below UNKNOWN = new Below(-1, -1, -1);
}
