package roundwright.pattern;

import java.util.List;
import java.util.function.Supplier;

/** One way to read a line: every choice made, and how well the sums fit. The round itself is written out when asked for. */
final class Interpretation {
    private final int[] options;
    private final Lazy<List<Piece>> pieces;
    private final Linear.Total total;
    private final long stated;
    private final int cost;
    private final boolean fitsBelow;
    private final boolean fitsStated;

    /**
     * @param options the chosen option of each habit, by ordinal
     * @param total what the round takes and makes
     * @param stated the count it is read to state, or -1
     * @param cost how little it is to be believed; lower is better
     * @param fitsBelow whether it uses what the round below offers, where that is known
     * @param fitsStated whether it makes what is stated, where that is known
     */
    Interpretation(
            int[] options,
            Supplier<List<Piece>> pieces,
            Linear.Total total,
            long stated,
            int cost,
            boolean fitsBelow,
            boolean fitsStated) {
        this.options = options;
        this.pieces = new Lazy<>(pieces);
        this.total = total;
        this.stated = stated;
        this.cost = cost;
        this.fitsBelow = fitsBelow;
        this.fitsStated = fitsStated;
    }

    /** The same with the round written differently, which takes nothing of a round below. */
    Interpretation begun(List<Piece> others) {
        Linear.Total without = new Linear.Total(0, total.makes(), total.steps());
        return new Interpretation(options, () -> others, without, stated, cost, fitsBelow, fitsStated);
    }

    int[] options() {
        return options;
    }

    List<Piece> pieces() {
        return pieces.get();
    }

    long takes() {
        return total.takes();
    }

    long makes() {
        return total.makes();
    }

    /** Steps of the round when all its repeats are written out. */
    long steps() {
        return total.steps();
    }

    long stated() {
        return stated;
    }

    int cost() {
        return cost;
    }

    boolean fitsBelow() {
        return fitsBelow;
    }

    boolean fitsStated() {
        return fitsStated;
    }

    boolean fits() {
        return fitsBelow && fitsStated;
    }
}
