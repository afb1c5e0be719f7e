package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The outline of a part from the side: how wide each round is and how high it lies, worked out from the counts.
 *
 * <p>A round of N stitches of width w is a circle of radius N·w ÷ 2π. From one round to the next the fabric is one stitch
 * high, along its slope: where the radius changes by the whole height of a stitch the fabric lies flat (a disc), where it
 * does not change it stands (a wall), and between the two it is a cone: rise² = height² − change². A round that widens by
 * more than its height cannot: it ruffles, and lies flat.
 */
public final class Outline {
    private Outline() {}

    /**
     * One round of the outline.
     *
     * @param radius in millimetres
     * @param height above the part's first round, in millimetres
     * @param ruffles whether it widens (or narrows) by more than a stitch's height allows
     */
    public record Ring(double radius, double height, boolean ruffles) {}

    /** The outline of a part's rounds, one ring each; a round whose count is not known keeps the radius of the one below. */
    public static List<Ring> of(Part part, Tension tension) {
        List<Ring> rings = new ArrayList<>();
        double radius = 0;
        double height = 0;
        for (Round round : part.rounds()) {
            OptionalInt count = round.count();
            double wide = count.isPresent() ? radius(count.getAsInt(), tension) : radius;
            double tall = tension.height() * stitchHeight(round);
            double change = Math.abs(wide - radius);
            boolean first = rings.isEmpty();
            boolean ruffles = !first && change > tall * RUFFLE;
            height += first ? 0 : Math.sqrt(Math.max(0, tall * tall - change * change));
            rings.add(new Ring(wide, height, ruffles));
            radius = wide;
        }
        return List.copyOf(rings);
    }

    /** Hands and yarn give way a little before a round ruffles: eight a round still lies flat where 6.28 would do. */
    private static final double RUFFLE = 1.3;

    /** The radius of a round, in millimetres: 36 stitches of 6 mm are 34 mm. */
    public static double radius(int stitches, Tension tension) {
        return stitches * tension.width() / (2 * Math.PI);
    }

    /** The tallest stitch of the round decides how high it is, in heights of a UK double crochet. */
    private static double stitchHeight(Round round) {
        return round.steps().stream()
                .flatMap(steps -> steps.list().stream())
                .filter(step -> step.makes() > 0 && step.action() != Step.Action.CHAIN)
                .mapToDouble(step -> step.stitch().height())
                .max()
                .orElse(1);
    }
}
