package roundwright.notation;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Words that a pattern defines for itself ("MB = make bobble", "k = 2 d into one stitch", "X = dc").
 *
 * <p>Filled while the pattern's definitions are read; then read only.
 */
public final class Vocabulary {
    /** Letters that many writers use as marks without saying so. */
    private static final Map<String, Lexicon.Entry> MARKS = Map.of(
            "x", new Lexicon.Entry(Meaning.STITCH, 0, StitchName.ANY, Hold.BOTH, null),
            "v", new Lexicon.Entry(Meaning.INC, 2, null, Hold.BOTH, null),
            "a", new Lexicon.Entry(Meaning.DEC, 2, null, Hold.BOTH, null),
            "w", new Lexicon.Entry(Meaning.INC, 3, null, Hold.BOTH, null),
            "m", new Lexicon.Entry(Meaning.DEC, 3, null, Hold.BOTH, null));

    /** Signs that are drawn as charts draw an increase and a decrease; they stand for V and A. */
    private static final String WEDGES = "\u2228\u22c1\u2227\u22c0";

    private static final char LAST_PLAIN = 0x7f;

    private static final int SHORTEST_PLURAL = 3;

    private final Map<String, Lexicon.Entry> words = new HashMap<>();

    private int definitions;
    private boolean numbersAlone;
    private boolean numbersAreStitches;

    /** Takes a bare number that begins a line as the number of its round. */
    public void defineNumbersAlone() {
        numbersAlone = true;
    }

    boolean numbersAlone() {
        return numbersAlone;
    }

    /** Takes a number that stands alone among the steps for so many stitches, as the pattern says. */
    void defineNumbersAreStitches() {
        numbersAreStitches = true;
    }

    boolean numbersAreStitches() {
        return numbersAreStitches;
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    /** What a word (folded) means in this pattern, one or several of it; null where the pattern does not define it. */
    Lexicon.Entry get(String word) {
        Lexicon.Entry entry = words.get(word);
        boolean several = entry == null && word.length() > SHORTEST_PLURAL && word.endsWith("s");
        if (!several) {
            return entry;
        }
        Lexicon.Entry one = words.get(word.substring(0, word.length() - 1));
        return one == null && word.endsWith("es") ? words.get(word.substring(0, word.length() - 2)) : one;
    }

    /** The pattern's own word for a decrease, where the token is an increase over as many, and the other way round. */
    Optional<String> other(Token shaping) {
        Meaning meaning = shaping.is(Meaning.INC) ? Meaning.DEC : Meaning.INC;
        return words.entrySet().stream()
                .filter(word ->
                        word.getValue().meaning() == meaning && word.getValue().value() == shaping.value())
                .map(Map.Entry::getKey)
                .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    }

    void define(String word, Lexicon.Entry entry) {
        words.put(Fold.of(word, 0, word.length()), entry);
        definitions++;
    }

    /** Defines a word (folded) that the pattern has not defined yet. */
    private void defineFirst(String word, Lexicon.Entry entry) {
        words.putIfAbsent(word, entry);
        definitions++;
    }

    /** Changes whenever a word is defined. */
    int definitions() {
        return definitions;
    }

    /** Whether a word (lower case) may be a writer's name of a round: a letter, or a word without a meaning in the trade. */
    public static boolean mayLabel(String word) {
        return word.length() == 1 ? !word.equals("x") && !isRound(word) : isFree(word);
    }

    /** Whether the letters from {@code from} to {@code to} are a word of the trade, so that they may never label: quicker than {@link #mayLabel}. */
    public static boolean isOfTrade(String text, int from, int to) {
        int place = Lexicon.ROOT;
        for (int i = from; i < to && place != Lexicon.NOWHERE; i++) {
            char c = Character.toLowerCase(text.charAt(i));
            place = c >= 'a' && c <= 'z' ? Lexicon.WORDS.after(place, c - 'a') : Lexicon.NOWHERE;
        }
        Lexicon.Entry entry = Lexicon.WORDS.entry(place);
        return entry != null
                && entry.meaning() != Meaning.UNKNOWN
                && (to - from > 1 || entry.meaning() == Meaning.ROUND);
    }

    /** Takes a word for this writer's name of a round, as it stands before or after its number. */
    public void defineLabel(String word) {
        define(word, new Lexicon.Entry(Meaning.ROUND, 0, null, null, null));
    }

    /** Whether a word (lower case) may be a writer's own for a stitch: it has no meaning in the trade, or that of a loop or a metre. */
    public static boolean mayCount(String word) {
        return word.startsWith("loop") || word.equals("m") || isFree(word);
    }

    /** Whether a word (lower case) names a round in the trade. */
    private static boolean isRound(String word) {
        return Scanner.scan(word, new Vocabulary()).stream().allMatch(token -> token.is(Meaning.ROUND));
    }

    /** Whether a word (lower case) means nothing in the trade. */
    private static boolean isFree(String word) {
        return Scanner.scan(word, new Vocabulary()).stream().allMatch(token -> token.is(Meaning.UNKNOWN));
    }

    /** Takes a word as this writer's for a counted stitch. */
    public void defineCountNoun(String word) {
        Lexicon.Entry stitch = new Lexicon.Entry(Meaning.ST, 0, null, null, null);
        defineFirst(word, stitch);
        if (word.endsWith("s")) {
            defineFirst(word.substring(0, word.length() - 1), stitch);
        }
    }

    /** Takes the letters X, V, A, W and M as marks for a stitch, an increase, a decrease and their doubles. */
    public void defineMarks() {
        MARKS.forEach(this::defineFirst);
    }

    /** Whether the line is written in letter marks ("(2X, V)*6"), as far as one line can show it. */
    public static boolean looksMarked(String text) {
        for (int i = 0; i < text.length(); i++) {
            boolean marks = switch (text.charAt(i)) {
                case 'V', 'A', 'X' -> alone(text, i);
                case 'v', 'a' -> small(text, i) && alone(text, i);
                default -> text.charAt(i) > LAST_PLAIN && WEDGES.indexOf(text.charAt(i)) >= 0;
            };
            if (marks) {
                return true;
            }
        }
        return false;
    }

    /** Whether a small letter stands behind a figure as a mark does: "2v", ", 6a", but not the "a" of "10a". */
    private static boolean small(String text, int i) {
        boolean jammed = i > 0 && Character.isDigit(text.charAt(i - 1));
        return jammed && (text.charAt(i) == 'v' || i > 1 && "( ,".indexOf(text.charAt(i - 2)) >= 0);
    }

    /** Whether nothing but a number stands in a bracket that opens here: "6V(12)". */
    static boolean countAt(String text, int open) {
        int at = open + 1;
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
            at++;
        }
        boolean opens = open < text.length() && "([{".indexOf(Fold.of(text.charAt(open))) >= 0;
        return opens && at > open + 1 && at < text.length() && ")]}".indexOf(Fold.of(text.charAt(at))) >= 0;
    }

    private static boolean alone(String text, int i) {
        char after = i + 1 < text.length() ? text.charAt(i + 1) : ')';
        char before = i > 0 ? text.charAt(i - 1) : ' ';
        char further = i > 1 ? text.charAt(i - 2) : ' ';
        boolean jammed =
                Character.isDigit(before) && further != ')' && !(further == ' ' && i > 2 && text.charAt(i - 3) == ')');
        boolean opened = before == '(' || before == ',' || before == ' ' && further == ',';
        boolean bracket = after == ' ' && i + 2 < text.length() && "([{*".indexOf(text.charAt(i + 2)) >= 0;
        boolean listed = ",)*".indexOf(after) >= 0 || jammed && countAt(text, after == ' ' ? i + 2 : i + 1);
        boolean named = before == '(' && after == ')';
        return jammed && (listed || after == ' ' && !bracket) || opened && listed && !named;
    }
}
