package roundwright.notation;

/**
 * A word, number or mark of a line with its place.
 *
 * @param spaced whether a blank stands before it
 */
record Token(
        Meaning meaning, int value, StitchName name, Hold hold, Feature feature, int start, int end, boolean spaced) {
    static Token mark(Meaning meaning, int value, int start, int end, boolean spaced) {
        return new Token(meaning, value, null, null, null, start, end, spaced);
    }

    boolean is(Meaning other) {
        return meaning == other;
    }

    Span span() {
        return new Span(start, end);
    }
}
