package roundwright.mistakes;

/** How a reported count stands against the pattern. */
public enum State {
    RIGHT("right"),
    OFF("off"),
    /** No likely mistake leads to it: the round should be counted again. */
    CANNOT_EXPLAIN("cannot-explain");

    private final String word;

    State(String word) {
        this.word = word;
    }

    /** The word for it in files and JSON. */
    public String word() {
        return word;
    }
}
