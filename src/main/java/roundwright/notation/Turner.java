package roundwright.notation;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rewrites a line in the other terms: the names of stitches, and nothing else.
 *
 * <p>{@code Turner.turn("Rnd 3: (Sc, sc2tog) x 6", Terms.US, Terms.UK)} is {@code "Rnd 3: (Dc, dc2tog) x 6"}.
 */
public final class Turner {
    /** A stitch's written forms, the longest first: short, whole words, and the same with a plural s. */
    private static final Map<StitchName, List<String>> FORMS = new EnumMap<>(StitchName.class);

    static {
        FORMS.put(StitchName.SC, List.of("single crochet", "s.c", "sc"));
        FORMS.put(StitchName.HDC, List.of("half double crochet", "half double", "h.d.c", "hdc"));
        FORMS.put(StitchName.DC, List.of("double crochet", "d.c", "dc"));
        FORMS.put(StitchName.HTR, List.of("half treble crochet", "half treble", "h.tr", "htr"));
        FORMS.put(StitchName.TR, List.of("treble crochet", "treble", "triple crochet", "tr"));
        FORMS.put(StitchName.DTR, List.of("double treble crochet", "double treble", "d.tr", "dtr"));
        FORMS.put(StitchName.TRTR, List.of("triple treble crochet", "triple treble", "trtr", "ttr"));
        FORMS.put(StitchName.QTR, List.of("quadruple treble", "qtr"));
    }

    /** Where a text says which terms it is in. */
    private static final Pattern SAID = Pattern.compile(
            "(?i)\\b(UK|US|USA|U\\.K\\.|U\\.S\\.|British|American) (?:crochet )?(?:terms|terminology)\\b"
                    + "|\\b(?:terms|terminology)(?: used)?\\s*(?::|-|=|are|is)?\\s*(UK|US|USA|British|American)\\b");

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
        return terms(turned.append(text, done, text.length()).toString(), to);
    }

    /** What the text says of its own terms is turned with it: "(US terms)", "Terms: UK". */
    private static String terms(String text, Terms to) {
        Matcher said = SAID.matcher(text);
        if (!said.find()) {
            return text;
        }
        StringBuilder turned = new StringBuilder();
        do {
            String side = said.group(1) == null ? said.group(2) : said.group(1);
            int start = said.start() + said.group().indexOf(side);
            String words = said.group();
            int at = start - said.start();
            String other = like(side, to == Terms.US ? "US" : "UK");
            said.appendReplacement(
                    turned,
                    Matcher.quoteReplacement(words.substring(0, at) + other + words.substring(at + side.length())));
        } while (said.find());
        return said.appendTail(turned).toString();
    }

    private static String turnedWord(Token token, String word, Terms from, Terms to) {
        if (token.is(Meaning.SKIP)) {
            return skip(word, to);
        }
        List<String> forms = token.name() == null ? null : FORMS.get(token.name());
        if (forms == null || token.name().only(to)) {
            return word;
        }
        String folded = folded(word);
        for (String form : forms) {
            int at = folded.indexOf(form);
            if (at >= 0) {
                Stitch stitch = token.name().in(from);
                boolean dotted = form.indexOf('.') > 0;
                String plain = form.length() > 4 && !dotted ? stitch.name(to) : stitch.written(to);
                String cased = like(word.substring(at, at + form.length()), dotted ? dotted(plain) : plain);
                return post(word, form, at, to).isPresent()
                        ? post(word, form, at, to).get() + cased
                        : word.substring(0, at) + cased + word.substring(at + form.length());
            }
        }
        return word;
    }

    /** "hdc" as the old books print it: "h.d.c". */
    private static String dotted(String written) {
        return switch (written) {
            case "sc", "dc", "ss" -> written.charAt(0) + "." + written.charAt(1);
            case "hdc" -> "h.d.c";
            case "htr", "dtr" -> written.charAt(0) + ".tr";
            default -> written;
        };
    }

    /** "rtrf", a raised treble front, is "FPdc" in the US: what stands before the stitch then. */
    private static Optional<String> post(String word, String form, int at, Terms to) {
        boolean raised = at == 1 && word.length() == form.length() + 2 && Fold.of(word.charAt(0)) == 'r';
        char last = Fold.of(word.charAt(word.length() - 1));
        if (!raised || to != Terms.US || last != 'f' && last != 'b') {
            return Optional.empty();
        }
        return Optional.of(last == 'f' ? "FP" : "BP");
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
