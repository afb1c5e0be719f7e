package roundwright.pattern;

/**
 * The outermost, first bracketed repeat of a round, as a place in the round's expanded steps.
 *
 * <p>{@code dc, (2 dc, inc) x 6, dc} has its block at {@code from = 1}, {@code length = 3}, {@code times = 6}; its steps end at 19.
 *
 * @param from index of the block's first step
 * @param length steps of one pass
 * @param times passes; steps {@code from … from + length * times - 1} are the block's
 */
public record RepeatedBlock(int from, int length, int times) {
    public RepeatedBlock {
        if (from < 0 || length < 1 || times < 1) {
            throw new IllegalArgumentException("no block of " + length + " steps, " + times + " times, from " + from);
        }
    }

    /** Index of the first step after the block. */
    public int end() {
        return from + length * times;
    }
}
