package roundwright.notation;

import java.util.List;

/** A written instruction as a tree. Every node knows where it was written. */
public sealed interface Node {
    Span span();

    /** What the hands do in one step. */
    enum Manner {
        PLAIN,
        INCREASE,
        DECREASE,
        INVISIBLE_DECREASE,
        SKIP,
        CHAIN,
        STARTING_CHAIN,
        JOIN,
        GROUP
    }

    /** What a step is worked into. */
    enum Target {
        /** The next stitch of the round below. */
        NEXT,
        /** The stitch that was last worked into, or the round's first. */
        SAME,
        /** The ring that a part begins with. */
        RING,
        /** A chain that the line made itself, along it. */
        FOUNDATION,
        /** One chain of it: "6 dc in 2nd ch from hook". */
        ONE_CHAIN,
        /** A space between stitches of the round below. */
        SPACE
    }

    /**
     * One kind of step, so many times.
     *
     * @param stitch as the writer names it
     * @param takes stitches of the round below that one step uses
     * @param makes stitches that one step makes
     * @param own the pattern's own name for the step, or empty
     */
    record Work(
            Span span,
            Manner manner,
            StitchName stitch,
            int takes,
            int makes,
            Times times,
            Hold hold,
            Target target,
            String own)
            implements Node {
        public Work times(Times other) {
            return new Work(span, manner, stitch, takes, makes, other, hold, target, own);
        }

        public Work hold(Hold other) {
            return new Work(span, manner, stitch, takes, makes, times, other, target, own);
        }

        public Work in(Target other, int newTakes) {
            return new Work(span, manner, stitch, newTakes, makes, times, hold, other, own);
        }

        public Work over(Span other) {
            return new Work(other, manner, stitch, takes, makes, times, hold, target, own);
        }
    }

    /**
     * Steps done several times over.
     *
     * @param cut steps of a last, shortened pass; empty where every pass is whole
     */
    record Repeat(Span span, List<Node> body, Times times, List<Node> cut) implements Node {
        public Repeat {
            body = List.copyOf(body);
            cut = List.copyOf(cut);
        }
    }

    /** Several steps worked into one place: "(2 tr, ch 2, 2 tr) in next st". */
    record Together(Span span, List<Node> body, Times times, Target target, int takes) implements Node {
        public Together {
            body = List.copyOf(body);
        }
    }

    /** Words that can be read in more than one way; a habit of the writer decides. */
    record Choice(Span span, Habit habit, List<Node> options) implements Node {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /** Several steps, one after another. */
    record Sequence(Span span, List<Node> body) implements Node {
        public Sequence {
            body = List.copyOf(body);
        }
    }

    /** Words around the stitches: kept, and never stitches. */
    record Note(Span span, Feature feature) implements Node {}
}
