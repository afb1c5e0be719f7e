package roundwright.technique;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the word that was probably meant: the nearest of those that are known, if it is near enough.
 *
 * <p>Near enough is at most one slip (a letter missing, added, wrong, or swapped with its neighbour) for every three letters of
 * what was written, at least one and at most four: {@code "tensoin"} is one slip from {@code "tension"} and may have two;
 * {@code "hat"} is two from {@code "hook"} and may have one, so nothing is offered.
 */
public final class DidYouMean {
    private static final int LETTERS_A_SLIP = 3;
    private static final int MOST_SLIPS = 4;
    private static final int LONGEST = 80;

    private DidYouMean() {}

    /** The nearest of the known words, as the known words spell it; the first of those equally near. */
    public static Optional<String> of(String written, Collection<String> known) {
        String asked = plain(written);
        if (asked.isEmpty() || asked.length() > LONGEST) {
            return Optional.empty();
        }
        int most = Math.min(MOST_SLIPS, Math.max(1, asked.length() / LETTERS_A_SLIP));
        return known.stream()
                .filter(word -> Math.abs(word.length() - asked.length()) <= most)
                .map(word -> new Near(word, slips(asked, plain(word))))
                .filter(near -> near.slips <= most)
                .min(Comparator.comparingInt(Near::slips))
                .map(Near::word);
    }

    private record Near(String word, int slips) {}

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    /** Fewest slips that turn one word into the other. */
    static int slips(String from, String to) {
        int[][] table = new int[from.length() + 1][to.length() + 1];
        for (int row = 0; row <= from.length(); row++) {
            for (int column = 0; column <= to.length(); column++) {
                table[row][column] = cell(from, to, row, column, table);
            }
        }
        return table[from.length()][to.length()];
    }

    private static int cell(String from, String to, int row, int column, int[][] table) {
        if (row == 0 || column == 0) {
            return row + column;
        }
        boolean same = from.charAt(row - 1) == to.charAt(column - 1);
        int best = Math.min(table[row - 1][column], table[row][column - 1]) + 1;
        best = Math.min(best, table[row - 1][column - 1] + (same ? 0 : 1));
        boolean swapped = row > 1
                && column > 1
                && from.charAt(row - 1) == to.charAt(column - 2)
                && from.charAt(row - 2) == to.charAt(column - 1);
        return swapped ? Math.min(best, table[row - 2][column - 2] + 1) : best;
    }
}
