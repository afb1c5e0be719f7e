package roundwright.notation;

/** Something that a line has the hands do or know, besides its stitches: what a teacher must have taught before it. */
public enum Feature {
    MAGIC_RING,
    /** The first round goes into one chain: "ch 2, 6 dc in 2nd ch from hook". */
    CHAIN_START,
    RING_OF_CHAINS,
    /** A chain that rows or an oval are worked along. */
    FOUNDATION_CHAIN,
    OVAL,
    STARTING_CHAIN,
    JOINED,
    TURNED,
    IN_SPACES,
    COLOUR_CHANGE,
    STUFF,
    FASTEN_OFF,
    CLOSE,
    SEW,
    EYES,
    EMBROIDER,
    MARKER,
    JOIN_PARTS,
    WEAVE_IN,
    LEAVE_TAIL,
    REPEATED_ROUND,
    OTHER
}
