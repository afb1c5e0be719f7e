package roundwright.pattern;

/** What the sums say of a line. */
public enum Verdict {
    /** Read whole; uses what the round below offers, where that is known, and makes the stated count. */
    ADDS_UP("adds-up"),
    DOES_NOT_ADD_UP("does-not-add-up"),
    /** Read whole and fits, but the line states no count. */
    NO_COUNT("no-count"),
    /** No stitches in it. */
    INSTRUCTION("instruction"),
    /** A stitch instruction that could not be read whole. */
    NOT_UNDERSTOOD("not-understood");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word for it in files and JSON. */
    public String word() {
        return word;
    }
}
