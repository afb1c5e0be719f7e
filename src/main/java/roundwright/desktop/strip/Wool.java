package roundwright.desktop.strip;

import java.awt.Color;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.UIManager;

/** Yarn colours as the strip paints them: the colour words of the trade, toned to the theme. */
public enum Wool {
    WHITE("white", "ivory", "ecru", "snow"),
    CREAM("cream", "natural", "oat", "sand", "beige", "linen", "vanilla"),
    YELLOW("yellow", "lemon", "straw"),
    GOLD("gold", "golden", "mustard", "ochre", "honey", "amber"),
    ORANGE("orange", "apricot", "peach", "tangerine", "copper"),
    RED("red", "scarlet", "crimson", "coral", "poppy"),
    PINK("pink", "rose", "blush", "salmon", "magenta"),
    PURPLE("purple", "violet", "lilac", "lavender", "plum", "mauve"),
    BLUE("blue", "navy", "sky", "denim", "indigo"),
    TEAL("teal", "turquoise", "aqua", "mint", "petrol"),
    GREEN("green", "olive", "moss", "sage", "lime"),
    BROWN("brown", "chocolate", "coffee", "tan", "caramel", "camel"),
    RUST("rust", "brick", "terracotta", "burgundy", "maroon", "wine"),
    GREY("grey", "gray", "silver", "stone", "slate"),
    BLACK("black", "charcoal", "anthracite"),
    QUIET1,
    QUIET2,
    QUIET3,
    QUIET4;

    private static final Pattern WORD = Pattern.compile("\\p{L}+");
    private static final Map<String, Wool> BY_WORD = byWord();
    private static final List<Wool> QUIET = List.of(QUIET1, QUIET2, QUIET3, QUIET4);

    private final List<String> words;

    Wool(String... words) {
        this.words = List.of(words);
    }

    public Color color() {
        return UIManager.getColor("Roundwright.wool." + name().toLowerCase(Locale.ROOT));
    }

    /** The tone of a part for which no colour is named: four quiet tones in turn. */
    public static Wool quiet(int part) {
        return QUIET.get(part % QUIET.size());
    }

    /** The first colour that a text names: "Change to red." is RED. */
    public static Optional<Wool> named(String text) {
        Matcher word = WORD.matcher(text.toLowerCase(Locale.ROOT));
        while (word.find()) {
            Wool named = BY_WORD.get(word.group());
            if (named != null) {
                return Optional.of(named);
            }
        }
        return Optional.empty();
    }

    private static Map<String, Wool> byWord() {
        Map<String, Wool> found = new HashMap<>();
        for (Wool wool : values()) {
            for (String word : wool.words) {
                found.putIfAbsent(word, wool);
            }
        }
        return found;
    }
}
