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

    /**
     * Shapings spread over a round with plain stitches between them: "decrease 6 sts evenly", "decrease evenly to 12".
     *
     * @param to how many stitches the round has then; 0 where the shaping says how often it is done
     */
    record Spread(Span span, Work shaping, int to) implements Node {
        /** The steps on so many stitches (-1: it is not known); empty where that many cannot be had from them. */
        public List<Node> on(long stitches) {
            if (stitches < 1) {
                return to > 0
                        ? List.of()
                        : List.of(
                                shaping,
                                new Work(
                                        span,
                                        Manner.PLAIN,
                                        shaping.stitch(),
                                        1,
                                        1,
                                        Times.FULL,
                                        shaping.hold(),
                                        Target.NEXT,
                                        ""));
            }
            long change = shaping.makes() - shaping.takes();
            long times = to > 0 ? (to - stitches) / change : shaping.times().number();
            long plain = Math.max(0, stitches - times * shaping.takes());
            if (to > 0 && (times < 1 || stitches < times * shaping.takes() || (to - stitches) % change != 0)) {
                return List.of();
            }
            Work rest = new Work(
                    span, Manner.PLAIN, shaping.stitch(), 1, 1, Times.of((int) plain), shaping.hold(), Target.NEXT, "");
            Work shapings = shaping.times(Times.of((int) times));
            return plain == 0 ? List.of(shapings) : List.of(shapings, rest);
        }
    }

    /** Words around the stitches: kept, and never stitches. */
    record Note(Span span, Feature feature) implements Node {}
}
