package roundwright.pattern;

import java.util.List;
import roundwright.notation.Node;
import roundwright.notation.Terms;

/** One way to read a line: every choice made, and how well the sums fit. The round itself is written out when asked for. */
final class Interpretation {
    private final List<Node> tree;
    private final int[] options;
    private final Terms terms;
    private final Linear.Fill fill;
    private final Linear.Total total;
    private final long stated;
    private final int cost;
    private final boolean fitsBelow;
    private final boolean fitsStated;
    /** Two threads may both write the round out; they get equal ones. */
    private volatile List<Piece> pieces;

    /**
     * @param tree the line's tree, in which the options choose
     * @param options the chosen option of each habit, by ordinal
     * @param fill how often what fills the round is done
     * @param total what the round takes and makes
     * @param stated the count it is read to state, or -1
     * @param cost how little it is to be believed; lower is better
     * @param fitsBelow whether it uses what the round below offers, where that is known
     * @param fitsStated whether it makes what is stated, where that is known
     */
    Interpretation(
            List<Node> tree,
            int[] options,
            Terms terms,
            Linear.Fill fill,
            Linear.Total total,
            long stated,
            int cost,
            boolean fitsBelow,
            boolean fitsStated) {
        this.tree = tree;
        this.options = options;
        this.terms = terms;
        this.fill = fill;
        this.total = total;
        this.stated = stated;
        this.cost = cost;
        this.fitsBelow = fitsBelow;
        this.fitsStated = fitsStated;
    }

    /** The same with the round written differently, which takes nothing of a round below. */
    Interpretation begun(List<Piece> others) {
        Linear.Total without = new Linear.Total(0, total.makes(), total.steps());
        Interpretation begun =
                new Interpretation(tree, options, terms, fill, without, stated, cost, fitsBelow, fitsStated);
        begun.pieces = others;
        return begun;
    }

    int[] options() {
        return options;
    }

    List<Piece> pieces() {
        List<Piece> known = pieces;
        if (known == null) {
            known = Resolver.resolve(tree, options, terms, fill);
            pieces = known;
        }
        return known;
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
