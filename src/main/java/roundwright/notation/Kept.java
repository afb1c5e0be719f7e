package roundwright.notation;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Words of other languages that translators leave in a pattern ({@code kept.txt}): rounds ("okr. 3"), stitches ("6 pb"), shaping
 * ("aum", "Abn"). The words of the trade and the writer's own come first.
 */
public final class Kept {
    private static final Map<String, Lexicon.Entry> WORDS = new HashMap<>();

    /** Known only in capitals. */
    private static final Map<String, Lexicon.Entry> CAPITALS = new HashMap<>();

    /** Known in a pattern that has them as steps. */
    private static final Map<String, Lexicon.Entry> OPEN = new HashMap<>();

    /** The letters, small or capitals, with which those begin. */
    private static final boolean[] OPEN_BEGINS = new boolean[0x80];

    private static final int LONGEST_OPEN = 4;
    private static final int ENOUGH = 2;

    static {
        WordList list = new WordList("kept.txt");
        while (list.next()) {
            keep(new String(list.text(), list.from(), list.to() - list.from()), list.entry());
        }
        for (String open : OPEN.keySet()) {
            char first = open.charAt(0);
            if (first < OPEN_BEGINS.length) {
                OPEN_BEGINS[first] = true;
                OPEN_BEGINS[Character.toUpperCase(first)] = true;
            }
        }
    }

    private final Map<String, Integer> seen = new HashMap<>();

    private static void keep(String form, Lexicon.Entry entry) {
        String letters = form.startsWith("?") ? form.substring(1).strip() : form;
        boolean capitals = !letters.equals(letters.toLowerCase(Locale.ROOT));
        Map<String, Lexicon.Entry> words = capitals ? CAPITALS : letters.length() < form.length() ? OPEN : WORDS;
        words.put(Fold.of(letters, 0, letters.length()), entry);
    }

    /** What an unknown word from {@code from} to {@code to} means elsewhere; null where no language that we know has it. */
    static Lexicon.Entry word(String text, int from, int to) {
        Lexicon.Entry entry = WORDS.get(Fold.of(text, from, to));
        return entry == null ? capitals(text, from, to) : entry;
    }

    /** As {@link #word}, for what is written in capitals. */
    static Lexicon.Entry capitals(String text, int from, int to) {
        boolean capital = to - from > 1 && Character.isUpperCase(text.charAt(to - 1));
        return capital ? CAPITALS.get(Fold.of(text, from, to)) : null;
    }

    /** Takes notice of the words of a line that stand as steps do and could be another language's. */
    public void see(String text) {
        int begin = 0;
        for (int at = 0; at <= text.length(); at++) {
            if (at < text.length() && letter(text.charAt(at))) {
                continue;
            }
            if (at - begin > 1 && at - begin <= LONGEST_OPEN) {
                see(text, begin, at);
            }
            begin = at + 1;
        }
    }

    private void see(String text, int begin, int end) {
        char first = text.charAt(begin);
        boolean perhaps = first >= OPEN_BEGINS.length || OPEN_BEGINS[first];
        boolean small = perhaps && Character.isLowerCase(text.charAt(end - 1));
        if (!small || !listed(text, begin) || !ends(text, end)) {
            return;
        }
        String word = Fold.of(text, begin, end);
        if (OPEN.containsKey(word)) {
            seen.merge(word, Character.isDigit(text.charAt(before(text, begin))) ? ENOUGH : 1, Integer::sum);
        }
    }

    private static boolean letter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && Character.isLetter(c);
    }

    /** Whether a word that begins here stands after a mark, or after a number that does: "(1 ms, aug)". */
    private static boolean listed(String text, int begin) {
        int at = before(text, begin);
        if (at >= 0 && Character.isDigit(text.charAt(at))) {
            while (at >= 0 && Character.isDigit(text.charAt(at))) {
                at--;
            }
            at = before(text, at + 1);
        }
        return at >= 0 && ",;:([{*x".indexOf(text.charAt(at)) >= 0;
    }

    private static int before(String text, int at) {
        return at > 0 && text.charAt(at - 1) == ' ' ? at - 2 : at - 1;
    }

    private static boolean ends(String text, int end) {
        int at = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
        return at >= text.length()
                || ",;.)]}*x([0123456789".indexOf(text.charAt(at)) >= 0
                || text.startsWith("in ", at);
    }

    /** Takes the words that were seen often enough into the pattern's own, where it does not say what they mean. */
    public void define(Vocabulary vocabulary) {
        seen.forEach((word, times) -> {
            if (times >= ENOUGH && vocabulary.get(word) == null) {
                vocabulary.define(word, OPEN.get(word));
            }
        });
    }
}
