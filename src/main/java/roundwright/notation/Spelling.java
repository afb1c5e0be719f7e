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
        for (int i = start; i + 1 < end; i++) {
            char[] word = java.util.Arrays.copyOfRange(text, start, end);
            char first = word[i - start];
            word[i - start] = word[i + 1 - start];
            word[i + 1 - start] = first;
            Lexicon.Entry entry = word(word, word.length);
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    private Lexicon.Entry near() {
        int length = end - start;
        for (int i = 1; i < length && length >= LONG; i++) {
            char[] shorter = new char[length - 1];
            System.arraycopy(text, start, shorter, 0, i);
            System.arraycopy(text, start + i + 1, shorter, i, length - i - 1);
            Lexicon.Entry entry = word(shorter, length - 1);
            if (entry != null) {
                return entry;
            }
        }
        for (int i = 1; i <= length; i++) {
            Lexicon.Entry entry = inserted(i, length);
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    /** A letter missing before, or wrong at, place {@code i}. */
    private Lexicon.Entry inserted(int i, int length) {
        char[] longer = new char[length + 1];
        System.arraycopy(text, start, longer, 0, i);
        System.arraycopy(text, start + i, longer, i + 1, length - i);
        for (char letter = 'a'; letter <= 'z'; letter++) {
            longer[i] = letter;
            Lexicon.Entry entry = word(longer, length + 1);
            if (entry == null && i < length && length >= LONG) {
                char[] same = java.util.Arrays.copyOfRange(text, start, end);
                same[i] = letter;
                entry = word(same, length);
            }
            if (entry != null) {
                return entry;
            }
        }
        return null;
    }

    private static Lexicon.Entry word(char[] letters, int length) {
        Lexicon.Place place = Lexicon.WORDS.root();
        for (int i = 0; i < length && place != null; i++) {
            place = letters[i] >= 'a' && letters[i] <= 'z' ? place.after(letters[i] - 'a') : null;
        }
        return place != null && place.entry != null && correctable(place.entry.meaning()) ? place.entry : null;
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
                    FROM,
                    REMAINING -> true;
            default -> false;
        };
    }
}
