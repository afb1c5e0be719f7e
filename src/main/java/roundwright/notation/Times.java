package roundwright.notation;

/**
 * How often something is done: a number of times, or until the round is full but for some stitches left at its end.
 *
 * @param number the number of times, or, where it fills, the stitches to leave (-1: as many as what comes after needs)
 * @param fills whether it goes on until the round is full
 */
public record Times(int number, boolean fills) {
    public static final Times ONCE = new Times(1, false);
    public static final Times FULL = new Times(-1, true);

    /** On to the next corner: together with the others of its round as often as stitches are there. */
    public static final Times TO_CORNER = new Times(-2, true);

    public static Times of(int number) {
        return number == 1 ? ONCE : new Times(number, false);
    }

    /** Whether it is once and no more. */
    public boolean once() {
        return are(1);
    }

    /** Whether it is exactly so many times. */
    public boolean are(int times) {
        return number == times && !fills;
    }

    /** "to last 3 sts". */
    public static Times toLast(int stitches) {
        return new Times(stitches, true);
    }
}
