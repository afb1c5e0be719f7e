package roundwright.pattern;

import roundwright.notation.Stitch;

/**
 * How much yarn rounds take: for each stitch about seven and a half times its width, times its height; an increase is two
 * stitches, a decrease one and a third, a chain less than half.
 *
 * <p>A ball of 432 double crochet (UK) with stitches 6 mm wide takes 432 × 7.5 × 6 mm = 19.4 m; with a fifth more to be
 * safe and a tail of 30 cm, 23.6 m. Sources: the trade's measured rows and its makers' rules of thumb; tails and margin
 * as for beginners.
 */
public final class Yarn {
    /** Length of yarn in one UK double crochet, in widths of the stitch. */
    private static final double WIDTHS_A_STITCH = 7.5;

    private static final double DECREASE = 1.35;
    private static final double CHAIN = 0.45;
    private static final double SLIP_STITCH = 0.5;
    private static final double MARGIN = 1.2;
    private static final double TAIL_METRES = 0.3;
    private static final double MILLIMETRES = 1000;

    private Yarn() {}

    /** Metres of yarn for a part, with a margin and a tail to sew with. */
    public static double metres(Part part, Tension tension) {
        double worked = part.rounds().stream()
                .mapToDouble(round -> metres(round, tension))
                .sum();
        return worked * MARGIN + TAIL_METRES;
    }

    /** Metres of yarn that go into one round, nothing added. */
    public static double metres(Round round, Tension tension) {
        double stitches = round.steps()
                .map(steps -> steps.list().stream().mapToDouble(Yarn::stitches).sum())
                .orElse((double) round.count().orElse(0));
        return stitches * WIDTHS_A_STITCH * tension.width() / MILLIMETRES;
    }

    /** The yarn of one step, in UK double crochet. */
    private static double stitches(Step step) {
        double height = step.stitch() == Stitch.SLIP_STITCH
                ? SLIP_STITCH
                : step.stitch().height();
        return switch (step.action()) {
            case SKIP -> 0;
            case CHAIN -> CHAIN * Math.max(1, step.makes());
            case JOIN -> SLIP_STITCH;
            case DECREASE, INVISIBLE_DECREASE -> DECREASE * height * step.takes() / 2;
            default -> Math.max(1, step.makes()) * height;
        };
    }
}
