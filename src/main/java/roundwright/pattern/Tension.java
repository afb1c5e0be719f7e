package roundwright.pattern;

/**
 * How large a maker's stitches are.
 *
 * @param width of one stitch, in millimetres
 * @param height of one round of UK double crochet (US single crochet), in millimetres
 */
public record Tension(double width, double height) {
    private static final double TEN_CENTIMETRES = 100;

    public Tension {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("stitches of " + width + " by " + height + " mm");
        }
    }

    /** "18 stitches and 20 rounds to 10 cm" is a width of 5.56 and a height of 5 millimetres. */
    public static Tension toTenCentimetres(double stitches, double rounds) {
        return new Tension(TEN_CENTIMETRES / stitches, TEN_CENTIMETRES / rounds);
    }
}
