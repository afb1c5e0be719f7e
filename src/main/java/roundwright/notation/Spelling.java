package roundwright.notation;

/**
 * Finds the word that a typing slip was meant to be: two letters swapped, one missing, one too many or one wrong.
 *
 * <p>Short words are corrected only where two letters are swapped ("icn"), longer ones for any single slip after the
 * first letter; and only words that steps are made of, so that ordinary words stay as they are.
 */
final class Spelling {
    private static final int LONGEST = 14;
    private static final int LONG = 5;
    private static final Lexicon.Entry UNKNOWN = new Lexicon.Entry(Meaning.UNKNOWN, 0, null, null, null);

    private final char[] text;
    private final int start;
    private final int end;

    private Spelling(char[] text, int start, int end) {
        this.text = text;
        this.start = start;
        this.end = end;
    }

    /** What the unknown word from {@code start} to {@code end} was meant to say; UNKNOWN where nothing is near. */
    static Lexicon.Entry meant(char[] text, int start, int end) {
        int length = end - start;
        if (length < 3 || length > LONGEST) {
            return UNKNOWN;
        }
        Spelling spelling = new Spelling(text, start, end);
        Lexicon.Entry entry = spelling.swapped();
        if (entry == null && length >= LONG - 1) {
            entry = spelling.near();
        }
        return entry == null ? UNKNOWN : entry;
    }

    /** The word that two halves make together; null where they make none. */
    static Lexicon.Entry joined(char[] text, int start, int end, int next, int nextEnd) {
        int length = end - start + nextEnd - next;
        if (length > LONGEST) {
            return null;
        }
        char[] whole = java.util.Arrays.copyOfRange(text, start, start + length);
        System.arraycopy(text, start, whole, 0, end - start);
        System.arraycopy(text, next, whole, end - start, nextEnd - next);
        return word(whole, length);
    }

    private Lexicon.Entry swapped() {
        char[] word = java.util.Arrays.copyOfRange(text, start, end);
        for (int i = 0; i + 1 < word.length; i++) {
            swap(word, i);
            Lexicon.Entry entry = word(word, word.length);
            if (entry != null) {
                return entry;
            }
            swap(word, i);
        }
        return null;
    }

    private static void swap(char[] word, int i) {
        char first = word[i];
        word[i] = word[i + 1];
        word[i + 1] = first;
    }

    /** One letter missing, too many or wrong, after the first: the tree of words is walked, and left by one edge. */
    private Lexicon.Entry near() {
        boolean any = end - start >= LONG;
        int place = after(Lexicon.ROOT, start);
        for (int i = start + 1; i <= end && place != Lexicon.NOWHERE; i++) {
            Lexicon.Entry entry = any && i < end ? rest(place, i + 1) : null;
            for (int letter = 0; letter < Lexicon.GAP && entry == null; letter++) {
                int other = Lexicon.WORDS.after(place, letter);
                if (other != Lexicon.NOWHERE) {
                    entry = rest(other, i);
                    entry = entry == null && any && i < end ? rest(other, i + 1) : entry;
                }
            }
            if (entry != null) {
                return entry;
            }
            place = i < end ? after(place, i) : Lexicon.NOWHERE;
        }
        return null;
    }

    private int after(int place, int i) {
        return text[i] >= 'a' && text[i] <= 'z' ? Lexicon.WORDS.after(place, text[i] - 'a') : Lexicon.NOWHERE;
    }

    /** What the letters from {@code from} on lead to from a place in the tree of words. */
    private Lexicon.Entry rest(int from, int i) {
        int place = from;
        for (int at = i; at < end && place != Lexicon.NOWHERE; at++) {
            place = after(place, at);
        }
        return usable(place);
    }

    private static Lexicon.Entry word(char[] letters, int length) {
        int place = Lexicon.ROOT;
        for (int i = 0; i < length && place != Lexicon.NOWHERE; i++) {
            place = letters[i] >= 'a' && letters[i] <= 'z'
                    ? Lexicon.WORDS.after(place, letters[i] - 'a')
                    : Lexicon.NOWHERE;
        }
        return usable(place);
    }

    private static Lexicon.Entry usable(int place) {
        Lexicon.Entry entry = Lexicon.WORDS.entry(place);
        boolean plain = entry != null && (entry.hold() == null || entry.hold() == Hold.BOTH);
        return plain && correctable(entry.meaning()) ? entry : null;
    }

    private static boolean correctable(Meaning meaning) {
        return switch (meaning) {
            case STITCH,
                    SPECIAL,
                    CHAIN,
                    SLIP,
                    SKIP,
                    INC,
                    DEC,
                    INVDEC,
                    TOG,
                    ST,
                    MAGIC,
                    EACH,
                    NEXT,
                    AROUND,
                    REPEAT,
                    TIMES,
                    ROUND,
                    SPACE,
                    RING,
                    FROM,
                    REMAINING -> true;
            default -> false;
        };
    }
}
