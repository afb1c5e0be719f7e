package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes the pieces of a round out as steps. */
final class Expansion {
    /** A round of more steps than this is not written out: no hand works it. */
    static final long MOST_STEPS = 20_000;

    private final List<Step> steps = new ArrayList<>();
    private RepeatedBlock block;

    private Expansion() {}

    static Steps of(List<Piece> pieces) {
        Expansion expansion = new Expansion();
        expansion.addAll(pieces);
        return new Steps(expansion.steps, Optional.ofNullable(expansion.block));
    }

    /** How many steps the pieces are when written out. */
    static long length(List<Piece> pieces) {
        long length = 0;
        for (Piece piece : pieces) {
            long one = piece instanceof Piece.Loop loop
                    ? Sums.times(length(loop.body()), loop.times())
                    : ((Piece.Run) piece).times();
            length = Math.min(Sums.MOST, length + one);
        }
        return length;
    }

    private void addAll(List<Piece> pieces) {
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Run run) {
                for (long i = 0; i < run.times(); i++) {
                    steps.add(run.step());
                }
            } else if (piece instanceof Piece.Loop loop) {
                add(loop);
            }
        }
    }

    private void add(Piece.Loop loop) {
        int from = steps.size();
        int length = (int) length(loop.body());
        if (length == 0) {
            return;
        }
        boolean first = block == null && length >= 2 && loop.times() >= 2;
        if (first) {
            block = new RepeatedBlock(from, length, (int) loop.times());
        }
        for (long i = 0; i < loop.times(); i++) {
            addAll(loop.body());
        }
    }
}
