package roundwright.notation;

/**
 * A stretch of text, from the offset of its first character up to but not including {@code end}, in UTF-16 units.
 *
 * <p>In {@code "Rnd 3: dc"} the label {@code Rnd 3} is {@code [0, 5)}.
 */
public record Span(int start, int end) {
    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("span [" + start + ", " + end + ") is not a stretch of text");
        }
    }

    public int length() {
        return end - start;
    }

    /** The smallest span that holds both. */
    public Span to(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }

    public Span moved(int by) {
        return new Span(start + by, end + by);
    }

    public boolean contains(Span other) {
        return start <= other.start && other.end <= end;
    }

    public String of(CharSequence text) {
        return text.subSequence(start, end).toString();
    }
}
