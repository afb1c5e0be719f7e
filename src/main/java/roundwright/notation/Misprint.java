package roundwright.notation;

/**
 * Mends what printing and copying by machine do to a line: words cut by a hyphen at the end of a printed line ("cro- chet"),
 * letters read for figures ("l8", "1O"). Characters are put in place of others, so that places stay the same.
 */
final class Misprint {
    private final char[] text;
    private final String written;

    private Misprint(char[] text, String written) {
        this.text = text;
        this.written = written;
    }

    /** Mends the folded characters of a line. A pattern that has words of its own may mean its letters. */
    static void mend(char[] folded, String written, boolean ownWords) {
        Misprint line = new Misprint(folded, written);
        for (int i = 0; i < folded.length; i++) {
            if (folded[i] == '-' && i > 0 && i + 2 < folded.length && folded[i + 1] == ' ') {
                line.hyphen(i);
            } else if (!ownWords && (folded[i] == 'l' || folded[i] == 'i' || folded[i] == 'o')) {
                i = figureLike(written.charAt(i)) ? line.figures(i) : i;
            }
        }
    }

    private boolean letterAt(int i) {
        return i >= 0 && i < text.length && text[i] >= 'a' && text[i] <= 'z';
    }

    private boolean digitAt(int i) {
        return i >= 0 && i < text.length && text[i] >= '0' && text[i] <= '9';
    }

    private boolean wordAt(int i) {
        return letterAt(i) || digitAt(i);
    }

    /** Joins the halves on both sides of a hyphen and a blank, where only the whole is a word. */
    private void hyphen(int dash) {
        int from = dash;
        while (letterAt(from - 1)) {
            from--;
        }
        int to = dash + 2;
        while (letterAt(to)) {
            to++;
        }
        if (from == dash || to == dash + 2 || known(text, from, dash) && known(text, dash + 2, to)) {
            return;
        }
        char[] whole = new char[to - from - 2];
        System.arraycopy(text, from, whole, 0, dash - from);
        System.arraycopy(text, dash + 2, whole, dash - from, to - dash - 2);
        if (known(whole, 0, whole.length)) {
            text[dash] = Fold.NOTHING;
            text[dash + 1] = Fold.NOTHING;
        }
    }

    /** Whether the letters are a word or the first word of a phrase. */
    private static boolean known(char[] text, int from, int to) {
        int place = Lexicon.ROOT;
        for (int i = from; i < to && place != Lexicon.NOWHERE; i++) {
            place = Lexicon.WORDS.after(place, text[i] - 'a');
        }
        return place != Lexicon.NOWHERE
                && (Lexicon.WORDS.entry(place) != null || Lexicon.WORDS.after(place, Lexicon.GAP) != Lexicon.NOWHERE);
    }

    private static boolean figureLike(char c) {
        return c == 'l' || c == 'I' || c == 'O' || c >= '0' && c <= '9';
    }

    /** Reads "l8", "3O" and "lO" as numbers, and an "l" alone before a word; the last place of what stands around the letter at {@code at}. */
    private int figures(int at) {
        int from = at;
        while (from > 0 && figureLike(written.charAt(from - 1))) {
            from--;
        }
        int to = from;
        boolean digits = false;
        boolean letters = false;
        while (to < written.length() && figureLike(written.charAt(to))) {
            digits |= digitAt(to);
            letters |= letterAt(to);
            to++;
        }
        char first = written.charAt(from);
        boolean number = digits && first != 'O' || first == 'l' && to == from + 2 && written.charAt(from + 1) == 'O';
        boolean one = first == 'l' && to == from + 1 && to + 1 < text.length && text[to] == ' ' && letterAt(to + 1);
        if (letters && !wordAt(from - 1) && !wordAt(to) && (number || one)) {
            for (int i = from; i < to; i++) {
                text[i] = text[i] == 'o' ? '0' : text[i] == 'l' || text[i] == 'i' ? '1' : text[i];
            }
        }
        return to - 1;
    }
}
