package roundwright.group.messages;

import java.text.Normalizer;
import java.util.Locale;

/** Makes words that people take for the same the same: "Inés", "INES" and "ines". */
public final class Folding {
    private Folding() {}

    public static String fold(String text) {
        if (text.chars().allMatch(character -> character < 128 && character != '\'' && character != '`')) {
            return text.toLowerCase(Locale.ROOT);
        }
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+|['’‘`´]", "")
                .toLowerCase(Locale.ROOT);
        return plain.replace("ø", "o")
                .replace("ł", "l")
                .replace("ß", "ss")
                .replace("æ", "ae")
                .replace("đ", "d")
                .replace("ı", "i");
    }

    /** In small letters, each at its place: letters that have a capital in common become the same. */
    static String small(String written) {
        char[] letters = written.toCharArray();
        for (int at = 0; at < letters.length; at++) {
            letters[at] = Character.toLowerCase(Character.toUpperCase(letters[at]));
        }
        return new String(letters);
    }

    /** How many letters must be put in, left out, changed or swapped to make one word of the other; more than {@code most} counts as {@code most + 1}. */
    static int distance(String left, String right, int most) {
        if (Math.abs(left.length() - right.length()) > most) {
            return most + 1;
        }
        int[][] cost = new int[left.length() + 1][right.length() + 1];
        for (int row = 0; row <= left.length(); row++) {
            for (int column = 0; column <= right.length(); column++) {
                cost[row][column] = cost(cost, left, right, row, column);
            }
        }
        return Math.min(cost[left.length()][right.length()], most + 1);
    }

    private static int cost(int[][] cost, String left, String right, int row, int column) {
        if (row == 0 || column == 0) {
            return row + column;
        }
        boolean same = left.charAt(row - 1) == right.charAt(column - 1);
        int best = Math.min(
                cost[row - 1][column - 1] + (same ? 0 : 1), 1 + Math.min(cost[row - 1][column], cost[row][column - 1]));
        boolean swapped = row > 1
                && column > 1
                && left.charAt(row - 1) == right.charAt(column - 2)
                && left.charAt(row - 2) == right.charAt(column - 1);
        return swapped ? Math.min(best, cost[row - 2][column - 2] + 1) : best;
    }
}
