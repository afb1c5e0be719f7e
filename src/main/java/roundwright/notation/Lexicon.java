package roundwright.notation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The words of {@code words.txt} as a tree of letters: looking a word up needs no string and no hashing. */
final class Lexicon {
    static final Lexicon WORDS = load("words.txt");

    /** What stands between the words of a phrase. */
    static final int GAP = 26;

    /** What a form means. */
    record Entry(Meaning meaning, int value, StitchName name, Hold hold, Feature feature) {}

    /** A place in the tree: what the letters so far mean, and where each further letter leads. */
    static final class Place {
        private final Place[] next = new Place[GAP + 1];
        Entry entry;

        Place after(int letter) {
            return next[letter];
        }
    }

    private final Place root = new Place();

    Place root() {
        return root;
    }

    private static Lexicon load(String name) {
        Lexicon lexicon = new Lexicon();
        try (InputStream stream = Lexicon.class.getResourceAsStream("/roundwright/notation/" + name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(lexicon::addLine);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return lexicon;
    }

    private void addLine(String line) {
        int colon = line.indexOf(':');
        String[] head = line.substring(0, colon).trim().split(" ");
        Entry entry = entry(Meaning.valueOf(head[0]), head.length > 1 ? head[1] : "");
        for (String form : line.substring(colon + 1).split("\\|")) {
            if (!form.isBlank()) {
                add(form.trim(), entry);
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
        if (entry.meaning() == Meaning.STITCH && form.indexOf(' ') < 0) {
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

    private static Entry held(Entry entry, Hold hold) {
        return new Entry(entry.meaning(), entry.value(), entry.name(), hold, null);
    }

    private void put(String form, Entry entry) {
        Place place = root;
        for (int i = 0; i < form.length(); i++) {
            int letter = letter(form.charAt(i));
            if (place.next[letter] == null) {
                place.next[letter] = new Place();
            }
            place = place.next[letter];
        }
        if (place.entry == null) {
            place.entry = entry;
        }
    }

    private static int letter(char c) {
        return c == ' ' ? GAP : c - 'a';
    }
}
