package roundwright.pattern;

import java.util.List;

/**
 * One way to read a line: every choice made, and how well the sums fit.
 *
 * @param options the chosen option of each habit, by ordinal
 * @param pieces the round; empty where something fills it and nothing tells how far
 * @param stated the count it is read to state, or -1
 * @param cost how little it is to be believed; lower is better
 * @param fitsBelow whether it uses what the round below offers, where that is known
 * @param fitsStated whether it makes what is stated, where that is known
 */
record Interpretation(
        int[] options,
        List<Piece> pieces,
        long takes,
        long makes,
        long stated,
        int cost,
        boolean fitsBelow,
        boolean fitsStated) {
    boolean fits() {
        return fitsBelow && fitsStated;
    }
}
