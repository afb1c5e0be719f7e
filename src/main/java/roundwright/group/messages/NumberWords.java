package roundwright.group.messages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Numbers in figures and in words, well and badly spelt: "thirty six", "fourty-one", "three dozen". */
final class NumberWords {
    /** A number and how many tokens it takes up. */
    record Found(int value, int length) {}

    private static final Map<String, Integer> UNITS = words(
            1,
            "one",
            "two|tow|twoo",
            "three|thre|tree",
            "four|fore",
            "five|fife",
            "six|sixx",
            "seven|sevn",
            "eight|eigth|eihgt",
            "nine|nien",
            "ten",
            "eleven|elven|elevn",
            "twelve|twelv|twelfe|twleve",
            "thirteen|thirten",
            "fourteen|forteen|fourten",
            "fifteen|fiveteen|fiften",
            "sixteen|sixten",
            "seventeen|seventen",
            "eighteen|eigteen|eightteen|eigthteen",
            "nineteen|ninteen|nineten");

    private static final Map<String, Integer> TENS = tens(
            "twenty|twenti|tweny|twnety",
            "thirty|thirthy|thrity|thiry|thirtie",
            "forty|fourty|fourthy|forthy",
            "fifty|fivty|fiftie|fivety",
            "sixty|sixtey|sixthy",
            "seventy|seventie",
            "eighty|eigty|eighthy",
            "ninety|ninty|ninetey");

    private static final Map<String, Integer> ORDINALS = words(
            1,
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth|twelvth",
            "thirteenth",
            "fourteenth",
            "fifteenth",
            "sixteenth",
            "seventeenth",
            "eighteenth",
            "nineteenth",
            "twentieth");

    /** Every word that a number in words begins with. */
    private static final Set<String> FIRST_WORDS = Stream.of(
                    UNITS.keySet(), TENS.keySet(), Set.of("a", "half", "dozen"))
            .flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    private NumberWords() {}

    /** Whether a word is a number, or the number of an ordinal. */
    static boolean is(String word) {
        return UNITS.containsKey(word) || TENS.containsKey(word) || ORDINALS.containsKey(word);
    }

    static Optional<Found> at(List<Token> tokens, int at) {
        if (at >= tokens.size()) {
            return Optional.empty();
        }
        Token token = tokens.get(at);
        if (token.number()) {
            return Optional.of(new Found(token.value(), 1));
        }
        return token.word() ? words(tokens, at) : Optional.empty();
    }

    /** "5th", "fifth": the number of an ordinal. */
    static Optional<Found> ordinal(List<Token> tokens, int at) {
        if (at >= tokens.size()) {
            return Optional.empty();
        }
        Token token = tokens.get(at);
        if (token.number() && at + 1 < tokens.size() && ordinalEnding(token.value(), tokens.get(at + 1))) {
            return Optional.of(new Found(token.value(), 2));
        }
        return Optional.ofNullable(ORDINALS.get(token.folded())).map(value -> new Found(value, 1));
    }

    private static boolean ordinalEnding(int value, Token ending) {
        String right = value / 10 % 10 == 1
                ? "th"
                : switch (value % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
        return ending.glued() && ending.is(right);
    }

    private static Optional<Found> words(List<Token> tokens, int at) {
        if (!FIRST_WORDS.contains(tokens.get(at).folded())) {
            return Optional.empty();
        }
        Optional<Found> dozen = dozens(tokens, at);
        return dozen.isPresent() ? dozen : hundreds(tokens, at).or(() -> small(tokens, at));
    }

    private static Optional<Found> dozens(List<Token> tokens, int at) {
        if (word(tokens, at).equals("half")
                && word(tokens, at + 1).equals("a")
                && word(tokens, at + 2).equals("dozen")) {
            return Optional.of(new Found(6, 3));
        }
        if (word(tokens, at).equals("a") && word(tokens, at + 1).equals("dozen")) {
            return Optional.of(new Found(12, 2));
        }
        if (word(tokens, at).equals("dozen")) {
            return Optional.of(new Found(12, 1));
        }
        return small(tokens, at)
                .filter(found -> word(tokens, at + found.length()).equals("dozen"))
                .map(found -> new Found(12 * found.value(), found.length() + 1));
    }

    private static Optional<Found> hundreds(List<Token> tokens, int at) {
        int hundreds = word(tokens, at).equals("a") ? 1 : UNITS.getOrDefault(word(tokens, at), 0);
        if (hundreds == 0 || !word(tokens, at + 1).equals("hundred")) {
            return Optional.empty();
        }
        int rest = at + 2 + (word(tokens, at + 2).equals("and") ? 1 : 0);
        return Optional.of(small(tokens, rest)
                .map(found -> new Found(100 * hundreds + found.value(), rest - at + found.length()))
                .orElse(new Found(100 * hundreds, 2)));
    }

    private static Optional<Found> small(List<Token> tokens, int at) {
        Integer tens = TENS.get(word(tokens, at));
        if (tens == null) {
            return Optional.ofNullable(UNITS.get(word(tokens, at))).map(value -> new Found(value, 1));
        }
        int next = at + 1 + (at + 1 < tokens.size() && tokens.get(at + 1).is("-") ? 1 : 0);
        Integer unit = UNITS.get(word(tokens, next));
        return Optional.of(unit != null && unit < 10 ? new Found(tens + unit, next - at + 1) : new Found(tens, 1));
    }

    private static String word(List<Token> tokens, int at) {
        return at < tokens.size() && tokens.get(at).word() ? tokens.get(at).folded() : "";
    }

    private static Map<String, Integer> words(int first, String... spellings) {
        Map<String, Integer> words = new HashMap<>();
        for (int index = 0; index < spellings.length; index++) {
            for (String spelling : spellings[index].split("\\|")) {
                words.put(spelling, first + index);
            }
        }
        return words;
    }

    private static Map<String, Integer> tens(String... spellings) {
        Map<String, Integer> tens = new HashMap<>();
        words(2, spellings).forEach((word, value) -> tens.put(word, 10 * value));
        return tens;
    }
}
