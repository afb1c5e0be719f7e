package roundwright.notation;

import java.util.ArrayList;
import java.util.List;

/** Cuts words that lost the blanks between them ("scineachst") into known ones. */
final class RunTogether {
    private static final int LONGEST = 40;
    private static final int SHORTEST = 7;
    /** Fewer words may stand in a common word by chance ("chin", "string"). */
    private static final int FEWEST = 3;

    private final char[] text;
    private final int from;
    private final int to;
    /** Places from which no way leads to the end. */
    private final boolean[] hopeless;

    private final List<Cut> cuts = new ArrayList<>();

    /** A known word and where it ends. */
    record Cut(Lexicon.Entry word, int end) {}

    private RunTogether(char[] text, int from, int to) {
        this.text = text;
        this.from = from;
        this.to = to;
        this.hopeless = new boolean[to - from];
    }

    /** The words in order; none where the letters are not three known words or more, the first a stitch. */
    static List<Cut> cuts(char[] text, int from, int to) {
        if (to - from < SHORTEST || to - from > LONGEST) {
            return List.of();
        }
        RunTogether letters = new RunTogether(text, from, to);
        boolean cut = letters.cut(from);
        boolean stitch = cut && letters.cuts.get(0).word().meaning().makes();
        return stitch && letters.cuts.size() >= FEWEST ? letters.cuts : List.of();
    }

    private boolean cut(int begin) {
        if (begin == to) {
            return true;
        }
        if (hopeless[begin - from]) {
            return false;
        }
        hopeless[begin - from] = true;
        return word(begin, begin, Lexicon.ROOT);
    }

    /** Cuts off a word of which the letters before {@code at} lead to a place among the known ones, the longest that lets the rest be cut. */
    private boolean word(int begin, int at, int place) {
        boolean letter = at < to && text[at] >= 'a' && text[at] <= 'z';
        int next = letter ? Lexicon.WORDS.after(place, text[at] - 'a') : Lexicon.NOWHERE;
        if (next != Lexicon.NOWHERE && word(begin, at + 1, next)) {
            return true;
        }
        Lexicon.Entry word = at > begin + 1 ? Lexicon.WORDS.entry(place) : null;
        if (word == null) {
            return false;
        }
        cuts.add(new Cut(word, at));
        if (cut(at)) {
            return true;
        }
        cuts.remove(cuts.size() - 1);
        return false;
    }
}
