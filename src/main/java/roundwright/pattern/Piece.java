package roundwright.pattern;

import java.util.List;

/** A round with every choice made, its repeats still folded: what the sums are done on. */
sealed interface Piece {
    long takes();

    long makes();

    /** The same step, so many times. */
    record Run(Step step, long times) implements Piece {
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
