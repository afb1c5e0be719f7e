package roundwright.notation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.BiConsumer;

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
        read(name, lexicon::add);
        return lexicon;
    }

    /** Hands on every form of a list of words with what it means. */
    static void read(String name, BiConsumer<String, Entry> forms) {
        try (InputStream stream = Lexicon.class.getResourceAsStream("/roundwright/notation/" + name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line -> readLine(line, forms));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void readLine(String line, BiConsumer<String, Entry> forms) {
        int colon = line.indexOf(':');
        String[] head = line.substring(0, colon).trim().split(" ");
        Entry entry = entry(Meaning.valueOf(head[0]), head.length > 1 ? head[1] : "");
        for (String form : line.substring(colon + 1).split("\\|")) {
            if (!form.isBlank()) {
                forms.accept(form.trim(), entry);
            }
        }
    }

    private static Entry entry(Meaning meaning, String payload) {
        return switch (meaning) {
            case STITCH, SPECIAL -> new Entry(meaning, 0, StitchName.valueOf(payload), Hold.BOTH, null);
            case CHAIN -> new Entry(meaning, 0, StitchName.CHAIN, Hold.BOTH, null);
            case SLIP -> new Entry(meaning, 0, StitchName.SLIP, Hold.BOTH, null);
            case INC, DEC, INVDEC, COUNTER, NUMBER, ORDINAL ->
                new Entry(meaning, Integer.parseInt(payload), null, null, null);
            case UNKNOWN -> new Entry(meaning, IS, null, null, null);
            case HOLD -> new Entry(meaning, 0, null, Hold.valueOf(payload), null);
            case NOTE -> new Entry(meaning, 0, null, null, Feature.valueOf(payload));
            default -> new Entry(meaning, 0, null, null, null);
        };
    }

    /** Adds a form; a basic stitch also comes jammed together with the words that shape or place it. */
    private void add(String form, Entry entry) {
        put(form, entry);
        boolean step =
                entry.meaning() == Meaning.STITCH || entry.meaning() == Meaning.INC || entry.meaning() == Meaning.DEC;
        if (step && form.indexOf(' ') < 0) {
            put("x" + form, entry);
            put(form + "x", entry);
            put(form + " s", entry);
        }
        if (entry.meaning() == Meaning.STITCH) {
            put("raised " + form + " front", held(entry, Hold.FRONT_POST));
            put("raised " + form + " back", held(entry, Hold.BACK_POST));
        }
        if (entry.meaning() == Meaning.STITCH) {
            put("foundation " + form, founding(entry));
        }
        if (entry.meaning() == Meaning.STITCH && form.indexOf(' ') < 0) {
            put("f" + form, founding(entry));
            put("r" + form + "f", held(entry, Hold.FRONT_POST));
            put("r" + form + "b", held(entry, Hold.BACK_POST));
            put("fp" + form, held(entry, Hold.FRONT_POST));
            put("bp" + form, held(entry, Hold.BACK_POST));
            put("flo" + form, held(entry, Hold.FRONT));
            put("blo" + form, held(entry, Hold.BACK));
            put(form + "flo", held(entry, Hold.FRONT));
            put(form + "blo", held(entry, Hold.BACK));
            put("b" + form, held(entry, Hold.BACK));
            put(form + "tog", new Entry(Meaning.TOG, 0, entry.name(), Hold.BOTH, null));
            put(form + "inc", new Entry(Meaning.INC, 2, entry.name(), Hold.BOTH, null));
            put("inc" + form, new Entry(Meaning.INC, 2, entry.name(), Hold.BOTH, null));
            put(form + "dec", new Entry(Meaning.DEC, 2, entry.name(), Hold.BOTH, null));
        }
    }

    private static Entry founding(Entry entry) {
        return new Entry(entry.meaning(), FOUNDING, entry.name(), entry.hold(), null);
    }

    private static Entry held(Entry entry, Hold hold) {
        return new Entry(entry.meaning(), entry.value(), entry.name(), hold, null);
    }

    private void put(String form, Entry entry) {
        int place = ROOT;
        for (int i = 0; i < form.length(); i++) {
            int at = place * LETTERS + letter(form.charAt(i));
            if (next[at] == NOWHERE) {
                int made = newPlace();
                next[at] = (char) made;
            }
            place = next[at];
        }
        if (entries[place] == null) {
            entries[place] = entry;
        }
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

    private static int letter(char c) {
        return c == ' ' ? GAP : c - 'a';
    }
}
