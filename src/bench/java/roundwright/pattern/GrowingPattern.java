package roundwright.pattern;

/** A pattern of as many rounds as are asked for: it grows by six to sixty stitches, stays, and shrinks, over and over. */
public final class GrowingPattern {
    private static final int WIDEST = 10;
    private static final int CYCLE = 2 * WIDEST;

    private GrowingPattern() {}

    /** The lines of the rounds, one a line. */
    public static String of(int rounds) {
        StringBuilder text = new StringBuilder("Rnd 1: 6 sc in magic ring (6)\n");
        int wide = 1;
        for (int round = 2; round <= rounds; round++) {
            int step = round % CYCLE;
            boolean wider = step > 1 && step <= WIDEST && wide < WIDEST;
            boolean narrower = step > WIDEST && wide > 1;
            text.append(round % 3 == 0 ? "Round " : "Rnd ").append(round).append(": ");
            text.append(wider ? shaped("inc", wide - 1) : narrower ? shaped("dec", wide - 2) : "sc in each st around");
            wide += wider ? 1 : narrower ? -1 : 0;
            text.append(" (").append(6 * wide).append(")\n");
        }
        return text.toString();
    }

    private static String shaped(String shaping, int plain) {
        return plain == 0 ? shaping + " x 6" : "(" + plain + " sc, " + shaping + ") x 6";
    }
}
