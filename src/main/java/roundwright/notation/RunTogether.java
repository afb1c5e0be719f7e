package roundwright.notation;

import java.util.ArrayList;
import java.util.List;

/** Cuts words that lost the blanks between them ("scineachst") into known ones. */
final class RunTogether {
    private static final int LONGEST = 40;
    private static final int SHORTEST = 7;
    /** Fewer words may stand in a common word by chance ("chin", "string"). */
    private static final int FEWEST = 3;

    private RunTogether() {}

    /** Where each word ends, in order; empty where the letters are not three known words or more, the first a stitch. */
    static List<Integer> cuts(char[] text, int from, int to) {
        if (to - from < SHORTEST || to - from > LONGEST) {
            return List.of();
        }
        boolean[] hopeless = new boolean[to + 1];
        List<Integer> cuts = new ArrayList<>();
        boolean cut = cut(text, from, to, cuts, hopeless);
        boolean stitch = cut && entry(text, from, cuts.get(0)).meaning().makes();
        return stitch && cuts.size() >= FEWEST ? cuts : List.of();
    }

    private static boolean cut(char[] text, int from, int to, List<Integer> cuts, boolean[] hopeless) {
        if (from == to) {
            return true;
        }
        for (int end = to; end > from + 1 && !hopeless[from]; end--) {
            if (entry(text, from, end) != null) {
                cuts.add(end);
                if (cut(text, end, to, cuts, hopeless)) {
                    return true;
                }
                cuts.remove(cuts.size() - 1);
            }
        }
        hopeless[from] = true;
        return false;
    }

    /** The known word from {@code from} to {@code to}; null where there is none. */
    static Lexicon.Entry entry(char[] text, int from, int to) {
        int place = Lexicon.ROOT;
        for (int i = from; i < to && place != Lexicon.NOWHERE; i++) {
            boolean letter = text[i] >= 'a' && text[i] <= 'z';
            place = letter ? Lexicon.WORDS.after(place, text[i] - 'a') : Lexicon.NOWHERE;
        }
        return Lexicon.WORDS.entry(place);
    }
}
