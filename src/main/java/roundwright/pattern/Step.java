package roundwright.pattern;

import java.util.Optional;
import roundwright.notation.Span;
import roundwright.notation.Stitch;

/**
 * One thing the hands do in a round: a stitch, an increase, a decrease, a skip, a chain.
 *
 * <p>An increase in UK double crochet is {@code (INCREASE, DOUBLE_CROCHET, takes 1, makes 2)}; a stitch passed over is
 * {@code (SKIP, …, takes 1, makes 0)}; a chain that is counted is {@code (CHAIN, CHAIN, takes 0, makes 1)}.
 *
 * @param action what is done
 * @param stitch the stitch it is done with
 * @param takes stitches of the round below that it uses
 * @param makes stitches it adds to this round's count
 * @param loop which loops or which part of the stitch below the hook goes under
 * @param span where it was written in the line
 * @param own the pattern's own name for it where the pattern defines the stitch itself; how a starting chain is written
 */
public record Step(Action action, Stitch stitch, int takes, int makes, Loop loop, Span span, Optional<String> own) {
    /** What the hands do. */
    public enum Action {
        /** One plain stitch in one stitch. */
        PLAIN,
        /** Two or more stitches in one. */
        INCREASE,
        /** Two or more stitches below closed as one. */
        DECREASE,
        /** The decrease picked up in the front loops. */
        INVISIBLE_DECREASE,
        /** A stitch below passed over on purpose. */
        SKIP,
        /** Chains made in the course of a round. */
        CHAIN,
        /** A slip stitch that joins the round; it is not counted. */
        JOIN,
        /** A stitch into the ring, into a chain space or into a foundation: it uses no stitch of the round below. */
        INTO_RING,
        /** Several stitches, or several closed as one, that the trade counts in its own way: bobble, shell, cluster. */
        GROUP
    }

    /** Where the hook goes in. */
    public enum Loop {
        BOTH,
        FRONT,
        BACK,
        THIRD,
        FRONT_POST,
        BACK_POST,
        SPACE
    }

    public Step {
        if (takes < 0 || makes < 0) {
            throw new IllegalArgumentException("a step cannot take " + takes + " and make " + makes + " stitches");
        }
    }

    /** The same step where there is no round below. */
    Step intoRing() {
        Action into = action == Action.PLAIN ? Action.INTO_RING : action;
        return new Step(into, stitch, 0, makes, loop, span, own);
    }

    /** Whether it is the chain that a round begins with; {@link #own} then says how it is written ("ch 3"). */
    public boolean starts() {
        return action == Action.CHAIN && own.isPresent();
    }

    /** One stitch used, one made, and no shaping: what a beginner calls "just a stitch". */
    public boolean plain() {
        return takes == 1 && makes == 1;
    }

    public boolean increases() {
        return makes > takes && takes >= 1;
    }

    public boolean decreases() {
        return takes > makes && makes >= 1;
    }
}
