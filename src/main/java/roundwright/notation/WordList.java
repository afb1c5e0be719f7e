package roundwright.notation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The forms of a list of words, one after another, each with what it means: {@code MEANING [payload] : form | form}, one meaning a
 * line. A form is a stretch of the list's text.
 */
final class WordList {
    private final char[] text;
    private Lexicon.Entry entry;
    /** Where the rest of the line begins. */
    private int at;

    private int from;
    private int to;

    WordList(String name) {
        try (InputStream stream = WordList.class.getResourceAsStream("/roundwright/notation/" + name)) {
            text = new String(stream.readAllBytes(), StandardCharsets.UTF_8).toCharArray();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Goes on to the next form; false where there is none. */
    boolean next() {
        while (at < text.length) {
            if (entry == null || text[at] == '\n') {
                head();
            } else {
                form();
                if (to > from) {
                    return true;
                }
            }
        }
        return false;
    }

    Lexicon.Entry entry() {
        return entry;
    }

    char[] text() {
        return text;
    }

    int from() {
        return from;
    }

    int to() {
        return to;
    }

    boolean oneWord() {
        for (int i = from; i < to; i++) {
            if (text[i] == ' ') {
                return false;
            }
        }
        return true;
    }

    /** Reads a line up to its colon; over one that is empty or a remark. */
    private void head() {
        at += text[at] == '\n' ? 1 : 0;
        entry = null;
        int end = end('\n');
        int colon = end(':');
        if (at == end || text[at] == '#') {
            at = end;
            return;
        }
        if (colon == end) {
            throw new IllegalStateException("no colon in " + new String(text, at, end - at));
        }
        String[] words = new String(text, at, colon - at).trim().split(" ");
        entry = entry(Meaning.valueOf(words[0]), words.length > 1 ? words[1] : "");
        at = colon + 1;
    }

    /** Reads up to the bar after a form, or the line's end. */
    private void form() {
        int end = end('|');
        from = at;
        to = end;
        while (from < to && text[from] == ' ') {
            from++;
        }
        while (to > from && text[to - 1] == ' ') {
            to--;
        }
        at = end < text.length && text[end] == '|' ? end + 1 : end;
    }

    /** Where a mark stands, or the line ends. */
    private int end(char mark) {
        int end = at;
        while (end < text.length && text[end] != mark && text[end] != '\n') {
            end++;
        }
        return end;
    }

    private static Lexicon.Entry entry(Meaning meaning, String payload) {
        return switch (meaning) {
            case STITCH, SPECIAL -> new Lexicon.Entry(meaning, 0, StitchName.valueOf(payload), Hold.BOTH, null);
            case CHAIN -> new Lexicon.Entry(meaning, 0, StitchName.CHAIN, Hold.BOTH, null);
            case SLIP -> new Lexicon.Entry(meaning, 0, StitchName.SLIP, Hold.BOTH, null);
            case INC, DEC, INVDEC, COUNTER, NUMBER, ORDINAL ->
                new Lexicon.Entry(meaning, Integer.parseInt(payload), null, null, null);
            case UNKNOWN -> new Lexicon.Entry(meaning, Lexicon.IS, null, null, null);
            case HOLD -> new Lexicon.Entry(meaning, 0, null, Hold.valueOf(payload), null);
            case NOTE -> new Lexicon.Entry(meaning, 0, null, null, Feature.valueOf(payload));
            default -> new Lexicon.Entry(meaning, 0, null, null, null);
        };
    }
}
