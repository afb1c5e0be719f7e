package roundwright.notation;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Rewrites a line in the other terms: the names of stitches, and nothing else.
 *
 * <p>{@code Turner.turn("Rnd 3: (Sc, sc2tog) x 6", Terms.US, Terms.UK)} is {@code "Rnd 3: (Dc, dc2tog) x 6"}.
 */
public final class Turner {
    /** A stitch's written forms, the longest first: short, whole words, and the same with a plural s. */
    private static final Map<StitchName, List<String>> FORMS = new EnumMap<>(StitchName.class);

    static {
        FORMS.put(StitchName.SC, List.of("single crochet", "sc"));
        FORMS.put(StitchName.HDC, List.of("half double crochet", "half double", "hdc"));
        FORMS.put(StitchName.DC, List.of("double crochet", "dc"));
        FORMS.put(StitchName.HTR, List.of("half treble crochet", "half treble", "htr"));
        FORMS.put(StitchName.TR, List.of("treble crochet", "treble", "triple crochet", "tr"));
        FORMS.put(StitchName.DTR, List.of("double treble crochet", "double treble", "dtr"));
        FORMS.put(StitchName.TRTR, List.of("triple treble crochet", "triple treble", "trtr", "ttr"));
        FORMS.put(StitchName.QTR, List.of("quadruple treble", "qtr"));
    }

    private Turner() {}

    /** The line in the terms {@code to}, read in the terms {@code from}; the same text where both are the same. */
    public static String turn(String text, Terms from, Terms to) {
        if (from == to) {
            return text;
        }
        StringBuilder turned = new StringBuilder(text.length() + 16);
        int done = 0;
        for (Token token : Scanner.scan(text, new Vocabulary())) {
            String word = text.substring(token.start(), token.end());
            String other = turnedWord(token, word, from, to);
            turned.append(text, done, token.start()).append(other);
            done = token.end();
        }
        return turned.append(text, done, text.length()).toString();
    }

    private static String turnedWord(Token token, String word, Terms from, Terms to) {
        if (token.is(Meaning.SKIP)) {
            return skip(word, to);
        }
        List<String> forms = token.name() == null ? null : FORMS.get(token.name());
        boolean otherwise =
                forms != null && token.name().only().filter(only -> only == to).isPresent();
        if (forms == null || otherwise) {
            return word;
        }
        String folded = folded(word);
        for (String form : forms) {
            int at = folded.indexOf(form);
            if (at >= 0) {
                Stitch stitch = token.name().in(from);
                String plain = form.length() > 4 ? stitch.name(to) : stitch.written(to);
                String cased = like(word.substring(at, at + form.length()), plain);
                return word.substring(0, at) + cased + word.substring(at + form.length());
            }
        }
        return word;
    }

    private static String folded(String word) {
        StringBuilder folded = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i++) {
            folded.append(Fold.of(word.charAt(i)));
        }
        return folded.toString();
    }

    private static String skip(String word, Terms to) {
        String lower = word.toLowerCase(Locale.ROOT);
        if (to == Terms.UK && lower.startsWith("skip")) {
            String rest = lower.startsWith("skipp") ? lower.substring(5) : lower.substring(4);
            return like(word.substring(0, 4), "miss") + rest;
        }
        if (to == Terms.US && lower.startsWith("miss")) {
            String rest = lower.substring(4);
            return like(word.substring(0, 4), rest.isEmpty() || rest.equals("s") ? "skip" : "skipp") + rest;
        }
        return word;
    }

    /** Another word in the capitals of this one: SC, Sc, sc. */
    private static String like(String model, String other) {
        boolean first = Character.isUpperCase(model.charAt(0));
        boolean all = first && model.length() > 1 && model.equals(model.toUpperCase(Locale.ROOT));
        if (all) {
            return other.toUpperCase(Locale.ROOT);
        }
        int second = model.indexOf(' ') + 1;
        boolean each = first && second > 0 && second < model.length() && Character.isUpperCase(model.charAt(second));
        if (each) {
            return capitals(other);
        }
        return first ? Character.toUpperCase(other.charAt(0)) + other.substring(1) : other;
    }

    /** Every word with a capital: "Half Treble". */
    private static String capitals(String words) {
        StringBuilder capitals = new StringBuilder(words);
        for (int i = 0; i < words.length(); i++) {
            if (i == 0 || words.charAt(i - 1) == ' ') {
                capitals.setCharAt(i, Character.toUpperCase(words.charAt(i)));
            }
        }
        return capitals.toString();
    }
}
