package roundwright.pattern;

import java.util.List;

/** Sums that cannot overflow: no round has a billion stitches, whatever a line says. */
final class Sums {
    static final long MOST = 1_000_000_000L;

    private Sums() {}

    static long times(long a, long b) {
        return a == 0 || b == 0 ? 0 : a > MOST / b ? MOST : a * b;
    }

    static long takes(List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum = Math.min(MOST, sum + piece.takes());
        }
        return sum;
    }

    static long makes(List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum = Math.min(MOST, sum + piece.makes());
        }
        return sum;
    }
}
