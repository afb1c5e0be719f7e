package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import roundwright.notation.Span;

/** Splits a stretch of a text into words, numbers and signs. */
final class Tokens {
    /** Longer runs of digits are nobody's stitch count. */
    private static final int LONGEST_NUMBER = 4;

    private final String text;
    private final List<Token> tokens = new ArrayList<>();

    private Tokens(String text) {
        this.text = text;
    }

    static List<Token> of(String text, Span stretch) {
        Tokens tokens = new Tokens(text);
        int at = stretch.start();
        while (at < stretch.end()) {
            at = tokens.next(at, stretch.end());
        }
        return tokens.tokens;
    }

    private int next(int at, int end) {
        int character = text.codePointAt(at);
        if (character == '\n' || character == '\r') {
            return add(Token.Kind.LINE_END, at, at + 1);
        }
        if (Character.isDigit(character)) {
            return add(Token.Kind.NUMBER, at, run(at, end, Character::isDigit));
        }
        if (Character.isLetter(character)) {
            return add(Token.Kind.WORD, at, run(at, end, Tokens::inWord));
        }
        if (Character.isWhitespace(character) || unseen(Character.getType(character))) {
            return at + Character.charCount(character);
        }
        return add(Token.Kind.SIGN, at, Math.min(end, at + Character.charCount(character)));
    }

    /** Marks that stand on nothing, such as the frame of a "9" in a box, say nothing. */
    private static boolean unseen(int type) {
        return type == Character.FORMAT || type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }

    private int run(int from, int end, IntPredicate test) {
        int at = from;
        while (at < end && test.test(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        return Math.min(at, end);
    }

    private static boolean inWord(int character) {
        return Character.isLetter(character)
                || Character.getType(character) == Character.NON_SPACING_MARK
                || character == '\''
                || character == '’';
    }

    private int add(Token.Kind kind, int from, int to) {
        boolean glued =
                !tokens.isEmpty() && tokens.get(tokens.size() - 1).span().end() == from;
        String written = text.substring(from, to);
        String folded =
                kind == Token.Kind.WORD ? joint(Folding.fold(written)) : kind == Token.Kind.LINE_END ? "\n" : written;
        tokens.add(new Token(
                kind,
                folded,
                Cues.begunBy(folded),
                kind == Token.Kind.NUMBER ? value(written) : -1,
                new Span(from, to),
                glued,
                Character.isUpperCase(written.codePointAt(0))));
        return to;
    }

    /** The small words of other languages that join numbers. */
    private static String joint(String word) {
        return switch (word) {
            case "et", "und", "og", "och" -> "and";
            case "oder", "ou" -> "or";
            case "bis" -> "to";
            case "noch" -> "still";
            default -> word;
        };
    }

    private static int value(String digits) {
        return digits.codePointCount(0, digits.length()) > LONGEST_NUMBER
                ? Integer.MAX_VALUE
                : digits.codePoints()
                        .map(digit -> Character.digit(digit, 10))
                        .reduce(0, (sum, digit) -> 10 * sum + digit);
    }
}
