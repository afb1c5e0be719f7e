package roundwright.notation;

/** What stands between the words of a phrase in a line: blanks, a hyphen, the full stop or slash of an abbreviation. */
final class PhraseGaps {
    /** A word before a full stop that is longer ends a sentence. */
    private static final int LONGEST_ABBREVIATION = 4;

    /** Before a slash within an abbreviation stand no more letters. */
    private static final int LONGEST_INITIALS = 2;

    private final String text;
    private final char[] folded;

    PhraseGaps(String text, char[] folded) {
        this.text = text;
        this.folded = folded;
    }

    /** Where the next word of a phrase begins, over blanks, one hyphen, one full stop, an apostrophe; -1 if it does not. */
    int after(int from) {
        int i = slashed(from) ? from + 1 : from;
        while (i < folded.length && i - from < 4 && gap(folded[i])) {
            i++;
        }
        boolean word = i > from && i < folded.length && folded[i] >= 'a' && folded[i] <= 'z';
        return word && !(folded[from] == '.' && sentenceEnds(from, i)) ? i : -1;
    }

    /** "s/c", "h/d/c", "sl/st": whether a slash parts the letters of one abbreviation. */
    private boolean slashed(int at) {
        if (folded[at] != '/') {
            return false;
        }
        int begin = beginOfWord(at);
        return at - begin <= LONGEST_INITIALS && at > begin;
    }

    /** Whether a full stop ends a sentence, and no abbreviation ("sl. st."): a capital stands after it, or a long word before it. */
    private boolean sentenceEnds(int stop, int next) {
        int begin = beginOfWord(stop);
        boolean capital = Character.isUpperCase(text.charAt(next)) && !Character.isUpperCase(text.charAt(begin));
        return next > stop + 1 && (capital || stop - begin > LONGEST_ABBREVIATION);
    }

    private static boolean gap(char c) {
        return c == ' ' || c == '-' || c == '.' || c == '\'' || c == Fold.NOTHING;
    }

    private int beginOfWord(int to) {
        int i = to;
        while (i > 0 && Scanner.letter(folded[i - 1])) {
            i--;
        }
        return i;
    }
}
