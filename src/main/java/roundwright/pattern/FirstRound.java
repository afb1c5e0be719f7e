package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Node;
import roundwright.notation.Node.Target;
import roundwright.pattern.Piece.Run;

/** A part's first round that does not say what it goes into ("R1: 6 dc"): a ring or a chain, but no round below. */
final class FirstRound {
    private FirstRound() {}

    /** The round with its plain stitches in the ring; unchanged where it has anything that only a round below allows. */
    static Interpretation of(Interpretation way) {
        return of(way, Target.RING);
    }

    /** The same with its plain stitches in a ring or along a chain. */
    static Interpretation of(Interpretation way, Target target) {
        if (way.takes() == 0) {
            return way;
        }
        for (Piece piece : way.pieces()) {
            if (!(piece instanceof Run run && simple(run.step()))) {
                return way;
            }
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : way.pieces()) {
            Run run = (Run) piece;
            Target into = run.step().action() == Step.Action.CHAIN ? run.target() : target;
            pieces.add(new Run(run.step().intoRing(), run.times(), into, run.parts()));
        }
        return way.begun(pieces);
    }

    /** Whether a line names the stitches it goes into ("dc in each st around"): then its part goes on from another. */
    static boolean goesOn(List<Node> body) {
        for (Node node : body) {
            if (goesOn(node)) {
                return true;
            }
        }
        return false;
    }

    private static boolean goesOn(Node node) {
        if (node instanceof Node.Work work) {
            return work.target() == Node.Target.NEXT && work.times().fills();
        }
        if (node instanceof Node.Sequence sequence) {
            return goesOn(sequence.body());
        }
        return node instanceof Node.Choice choice && goesOn(choice.options());
    }

    private static boolean simple(Step step) {
        return step.takes() == step.makes() && step.takes() <= 1;
    }
}
