package roundwright.pattern;

import java.util.List;

/** Sums that cannot overflow: no round has a billion stitches, whatever a line says. */
final class Sums {
    static final long MOST = 1_000_000_000L;

    private Sums() {}

    /** The product of two numbers of which neither is below nought or above the most. */
    static long times(long a, long b) {
        return Math.min(MOST, a * b);
    }

    static long takes(List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum = Math.min(MOST, sum + piece.takes());
        }
        return sum;
    }

    /** Spaces between stitches that chains make: chains made on end are one space. */
    static long spaces(List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum = Math.min(MOST, sum + spaces(piece));
        }
        return sum;
    }

    private static long spaces(Piece piece) {
        if (piece instanceof Piece.Loop loop) {
            return times(spaces(loop.body()), loop.times());
        }
        Piece.Run run = (Piece.Run) piece;
        boolean chain = run.step().action() == Step.Action.CHAIN && !run.step().starts() && run.times() > 0;
        return chain ? 1 : times(spaces(run.parts()), run.times());
    }

    static long makes(List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum = Math.min(MOST, sum + piece.makes());
        }
        return sum;
    }
}
