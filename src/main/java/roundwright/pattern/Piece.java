package roundwright.pattern;

import java.util.List;
import roundwright.notation.Node.Target;

/** A round with every choice made, its repeats still folded: what the sums are done on. */
sealed interface Piece {
    long takes();

    long makes();

    /**
     * The same step, so many times.
     *
     * @param target what its words say it is worked into
     * @param parts what one step is made of, where it is several stitches in one place; else empty
     */
    record Run(Step step, long times, Target target, List<Piece> parts) implements Piece {
        Run(Step step, long times) {
            this(step, times, Target.NEXT, List.of());
        }

        @Override
        public long takes() {
            return Sums.times(step.takes(), times);
        }

        @Override
        public long makes() {
            return Sums.times(step.makes(), times);
        }
    }

    /** Steps done several times over. */
    record Loop(List<Piece> body, long times) implements Piece {
        @Override
        public long takes() {
            return Sums.times(Sums.takes(body), times);
        }

        @Override
        public long makes() {
            return Sums.times(Sums.makes(body), times);
        }
    }
}
