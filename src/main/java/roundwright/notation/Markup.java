package roundwright.notation;

import java.util.Map;
import java.util.Set;

/** What copying from pages leaves in a text: tags, entities, words with blanks between their letters. */
final class Markup {
    private static final int LONGEST_ENTITY = 9;
    private static final int LONGEST_TAG = 120;

    private static final Map<String, Character> NAMED = Map.ofEntries(
            Map.entry("nbsp", ' '),
            Map.entry("amp", '&'),
            Map.entry("times", '\u00d7'),
            Map.entry("ndash", '-'),
            Map.entry("mdash", '-'),
            Map.entry("minus", '-'),
            Map.entry("shy", ' '),
            Map.entry("quot", '"'),
            Map.entry("ldquo", '"'),
            Map.entry("rdquo", '"'),
            Map.entry("lsquo", '\''),
            Map.entry("rsquo", '\''),
            Map.entry("apos", '\''),
            Map.entry("hellip", '.'),
            Map.entry("bull", '\u2022'),
            Map.entry("middot", '\u00b7'),
            Map.entry("ensp", ' '),
            Map.entry("emsp", ' '),
            Map.entry("thinsp", ' '));

    private static final Set<String> TAGS = Set.of(
            "b",
            "i",
            "u",
            "p",
            "br",
            "hr",
            "em",
            "strong",
            "span",
            "div",
            "li",
            "ul",
            "ol",
            "td",
            "tr",
            "th",
            "table",
            "tbody",
            "h1",
            "h2",
            "h3",
            "h4",
            "h5",
            "h6",
            "font",
            "sup",
            "sub",
            "small",
            "blockquote",
            "pre",
            "code");

    private Markup() {}

    /** A character written as an entity, and where the entity ends. */
    record Entity(char character, int end) {}

    /** The entity that begins with the ampersand at {@code from}; null where it begins none. */
    static Entity entity(String text, int from) {
        int end = text.indexOf(';', from);
        if (end < 0 || end - from > LONGEST_ENTITY || end - from < 3) {
            return null;
        }
        String name = text.substring(from + 1, end);
        Character named = NAMED.get(name);
        if (named != null) {
            return new Entity(named, end + 1);
        }
        int code = name.charAt(0) == '#' ? code(name.substring(1)) : -1;
        return code > 0 && code <= Character.MAX_VALUE ? new Entity((char) code, end + 1) : null;
    }

    private static int code(String digits) {
        boolean hexadecimal = digits.startsWith("x") || digits.startsWith("X");
        try {
            return hexadecimal ? Integer.parseInt(digits.substring(1), 16) : Integer.parseInt(digits);
        } catch (NumberFormatException none) {
            return -1;
        }
    }

    /** Where the tag that begins at {@code from} ends; -1 where none begins there. */
    static int tag(String text, int from) {
        int name = from + 1 < text.length() && text.charAt(from + 1) == '/' ? from + 2 : from + 1;
        int end = name;
        while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
            end++;
        }
        boolean known = end > name
                && end - name < 11
                && TAGS.contains(text.substring(name, end).toLowerCase(java.util.Locale.ROOT));
        int shut = known ? text.indexOf('>', end) : -1;
        boolean close = shut == end || shut > end && shut - end < LONGEST_TAG && " /".indexOf(text.charAt(end)) >= 0;
        return close ? shut + 1 : -1;
    }

    /**
     * Whether the text came with blanks within its words ("R nd 3 : ( s c , inc ) x 6 ( 1 8 )"); its figures are then put
     * together again where they stand.
     */
    static boolean explode(char[] folded) {
        if (!exploded(folded)) {
            return false;
        }
        for (int i = 1; i + 1 < folded.length; i++) {
            boolean alone = i < 2 || !digit(folded[i - 2]);
            if (folded[i] == ' ' && digit(folded[i - 1]) && digit(folded[i + 1]) && alone) {
                folded[i] = Fold.NOTHING;
            }
        }
        return true;
    }

    /** Letters alone that are no words, and marks with blanks on both sides, are more than half of what is there. */
    private static boolean exploded(char[] folded) {
        if (!letterAlone(folded)) {
            return false;
        }
        int words = 0;
        int pieces = 0;
        int letters = 0;
        for (int i = 0; i < folded.length; i++) {
            boolean begins = folded[i] != ' ' && (i == 0 || folded[i - 1] == ' ');
            boolean alone = begins && (i + 1 == folded.length || folded[i + 1] == ' ');
            words += begins ? 1 : 0;
            letters += alone && folded[i] >= 'b' && folded[i] <= 'z' && folded[i] != 'x' ? 1 : 0;
            pieces += alone && "x*&+-=|0123456789".indexOf(folded[i]) < 0 ? 1 : 0;
        }
        return letters >= 3 || letters > 0 && pieces >= 4 && 2 * pieces > words;
    }

    private static boolean letterAlone(char[] folded) {
        for (int i = 0; i < folded.length; i++) {
            boolean letter = folded[i] >= 'b' && folded[i] <= 'z';
            if (letter
                    && (i + 1 == folded.length || folded[i + 1] == ' ')
                    && (i == 0 || folded[i - 1] == ' ')
                    && folded[i] != 'x') {
                return true;
            }
        }
        return false;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
