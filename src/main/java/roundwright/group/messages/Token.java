package roundwright.group.messages;

import java.util.List;
import java.util.Map;
import roundwright.notation.Span;

/**
 * A word, number or sign of a message.
 *
 * @param folded lower case, without accents and apostrophes
 * @param begun the phrases that it begins, by their roles
 * @param value of a number, else -1
 * @param span in the whole text
 * @param glued whether nothing stands between it and the token before
 * @param capital whether it begins with a capital letter
 */
record Token(
        Kind kind,
        String folded,
        Map<Cue, List<String[]>> begun,
        int value,
        Span span,
        boolean glued,
        boolean capital) {
    /** What a token is made of. */
    enum Kind {
        WORD,
        NUMBER,
        SIGN,
        LINE_END
    }

    boolean is(String text) {
        return folded.equals(text);
    }

    /** @param expression one that stands in the program */
    boolean matches(String expression) {
        return Shape.matches(folded, expression);
    }

    boolean word() {
        return kind == Kind.WORD;
    }

    boolean number() {
        return kind == Kind.NUMBER;
    }

    boolean lineEnd() {
        return kind == Kind.LINE_END;
    }
}
