package roundwright.notation;

import java.util.Arrays;

/** The words of {@code words.txt} as a tree of letters: looking a word up needs no string and no hashing. */
final class Lexicon {
    static final Lexicon WORDS = load("words.txt");

    /** What stands between the words of a phrase. */
    static final int GAP = 26;

    /** What a form means. */
    record Entry(Meaning meaning, int value, StitchName name, Hold hold, Feature feature) {}

    /** The value of "is" and its like, which are words of no trade. */
    static final int IS = 1;

    /** The value of a stitch that is made with its own chain, on no round: "fsc", "foundation dc". */
    static final int FOUNDING = 1;

    /** What no letter leads to. */
    static final int NOWHERE = 0;

    /** Where the first letter of a word starts from. */
    static final int ROOT = 1;

    private static final int LETTERS = GAP + 1;

    /** Where each letter leads from each place; small and in one piece, for every letter read is looked up in it. */
    private char[] next = new char[1 << 16];

    private Entry[] entries = new Entry[1 << 11];
    private int places = ROOT + 1;

    /** The place that a letter leads to, or {@link #NOWHERE}. */
    int after(int place, int letter) {
        return next[place * LETTERS + letter];
    }

    /** What the letters that lead to a place mean; null where they are no whole form. */
    Entry entry(int place) {
        return entries[place];
    }

    private static Lexicon load(String name) {
        Lexicon lexicon = new Lexicon();
        WordList list = new WordList(name);
        while (list.next()) {
            lexicon.add(list);
        }
        return lexicon;
    }

    /** Adds a form; a basic stitch also comes jammed together with the words that shape or place it. */
    private void add(WordList form) {
        Entry entry = form.entry();
        int whole = after(ROOT, form);
        mean(whole, entry);
        boolean stitch = entry.meaning() == Meaning.STITCH;
        boolean step = stitch || entry.meaning() == Meaning.INC || entry.meaning() == Meaning.DEC;
        if (step && form.oneWord()) {
            mean(after(after(ROOT, "x"), form), entry);
            mean(after(whole, "x"), entry);
            mean(after(whole, " s"), entry);
        }
        if (stitch) {
            int raised = after(after(ROOT, "raised "), form);
            mean(after(raised, " front"), held(entry, Hold.FRONT_POST));
            mean(after(raised, " back"), held(entry, Hold.BACK_POST));
            mean(after(after(ROOT, "foundation "), form), founding(entry));
        }
        if (stitch && form.oneWord()) {
            addJammed(form, whole, entry);
        }
    }

    private void addJammed(WordList stitch, int whole, Entry entry) {
        mean(after(after(ROOT, "f"), stitch), founding(entry));
        int raised = after(after(ROOT, "r"), stitch);
        mean(after(raised, "f"), held(entry, Hold.FRONT_POST));
        mean(after(raised, "b"), held(entry, Hold.BACK_POST));
        mean(after(after(ROOT, "fp"), stitch), held(entry, Hold.FRONT_POST));
        mean(after(after(ROOT, "bp"), stitch), held(entry, Hold.BACK_POST));
        mean(after(after(ROOT, "flo"), stitch), held(entry, Hold.FRONT));
        mean(after(after(ROOT, "blo"), stitch), held(entry, Hold.BACK));
        mean(after(whole, "flo"), held(entry, Hold.FRONT));
        mean(after(whole, "blo"), held(entry, Hold.BACK));
        mean(after(after(ROOT, "b"), stitch), held(entry, Hold.BACK));
        mean(after(after(ROOT, "bl"), stitch), held(entry, Hold.BACK));
        mean(after(after(ROOT, "fl"), stitch), held(entry, Hold.FRONT));
        mean(after(whole, "tog"), new Entry(Meaning.TOG, 0, entry.name(), Hold.BOTH, null));
        mean(after(whole, "inc"), new Entry(Meaning.INC, 2, entry.name(), Hold.BOTH, null));
        mean(after(after(ROOT, "inc"), stitch), new Entry(Meaning.INC, 2, entry.name(), Hold.BOTH, null));
        mean(after(whole, "dec"), new Entry(Meaning.DEC, 2, entry.name(), Hold.BOTH, null));
    }

    private static Entry founding(Entry entry) {
        return new Entry(entry.meaning(), FOUNDING, entry.name(), entry.hold(), null);
    }

    private static Entry held(Entry entry, Hold hold) {
        return new Entry(entry.meaning(), entry.value(), entry.name(), hold, null);
    }

    /** Lets the letters that lead to a place mean something, where they do not yet. */
    private void mean(int place, Entry entry) {
        if (entries[place] == null) {
            entries[place] = entry;
        }
    }

    private int after(int place, WordList form) {
        return make(place, form.text(), form.from(), form.to());
    }

    private int after(int place, String letters) {
        return make(place, letters.toCharArray(), 0, letters.length());
    }

    /** The place that letters lead to from another, made where there is none. */
    private int make(int from, char[] letters, int begin, int end) {
        int place = from;
        for (int i = begin; i < end; i++) {
            char c = letters[i];
            int at = place * LETTERS + (c == ' ' ? GAP : c - 'a');
            if (next[at] == NOWHERE) {
                int made = newPlace();
                next[at] = (char) made;
            }
            place = next[at];
        }
        return place;
    }

    private int newPlace() {
        if (places == Character.MAX_VALUE) {
            throw new IllegalStateException("more words than the tree of letters can hold");
        }
        if (places == entries.length) {
            entries = Arrays.copyOf(entries, places * 2);
        }
        if ((places + 1) * LETTERS > next.length) {
            next = Arrays.copyOf(next, next.length * 2);
        }
        return places++;
    }
}
