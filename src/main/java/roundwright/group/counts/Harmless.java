package roundwright.group.counts;

import java.util.regex.Pattern;

/**
 * Words that a spreadsheet would compute get an apostrophe before them in a text file, which shows them as words: a student who is
 * called {@code =1+1} stays a student. In a spreadsheet's own form words are marked as words, and nothing is needed.
 */
final class Harmless {
    /** The signs that begin a formula, wide forms too, after blanks and signs that do not show. */
    private static final Pattern FORMULA = Pattern.compile("(?s)[\\s\\p{C}\\u00a0]*[=+\\-@＝＋－＠\\t\\r].*");

    private static final Pattern KEPT = Pattern.compile("(?s)'+[\\s\\p{C}\\u00a0]*[=+\\-@＝＋－＠].*");

    private Harmless() {}

    static String of(String cell) {
        return FORMULA.matcher(cell).matches() || KEPT.matcher(cell).matches() ? "'" + cell : cell;
    }

    /** For a form that marks words as words: only what {@link #undone} would take away is added. */
    static String marked(String cell) {
        return KEPT.matcher(cell).matches() ? "'" + cell : cell;
    }

    /** The words as they were before {@link #of}. */
    static String undone(String cell) {
        return cell.startsWith("'") && KEPT.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
