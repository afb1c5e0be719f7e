package roundwright.group.messages;

import java.util.List;
import roundwright.notation.Span;

/**
 * Something in a message that has a part in saying a count.
 *
 * @param kind what it is
 * @param rounds of {@link Kind#ROUNDS}: the round numbers, in order
 * @param value of a {@link Kind#NUMBER} or {@link Kind#TARGET} the number, of a {@link Kind#SHIFT} stitches more or fewer than due
 * @param text of a {@link Kind#NAME} or {@link Kind#PART} its name; of a {@link Kind#JOINT} what joins
 * @param span where it stands in the text
 * @param first index of its first token
 * @param after index of the token after it
 */
record Mark(Kind kind, List<Integer> rounds, int value, String text, Span span, int first, int after) {
    /** What a mark is. */
    enum Kind {
        /** "rnds 5-7". */
        ROUNDS,
        /** "36", a count or the number of a round written without a word. */
        NUMBER,
        /** "36 sts", surely a count. */
        COUNT,
        /** "should be 36", a number that is not what the student has. */
        TARGET,
        /** "two too many". */
        SHIFT,
        /** "off by one", without saying which way. */
        UNCLEAR_SHIFT,
        NAME,
        /** "I", "mine". */
        SELF,
        /** "She", "his". */
        OTHER,
        PART,
        UNFINISHED,
        PULLED_BACK,
        CORRECTION,
        OR,
        DOUBT,
        SAME,
        ALL_RIGHT,
        RIGHT,
        ALL,
        UNTIL,
        QUESTION_WORD,
        HYPOTHETICAL,
        /** A comma, "and", a dash, a colon, the end of a line. */
        JOINT,
        /** The end of a sentence; its text holds a question mark where it had one. */
        END
    }

    static Mark of(Kind kind, Span span, int first, int after) {
        return new Mark(kind, List.of(), 0, "", span, first, after);
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean number() {
        return kind == Kind.NUMBER || kind == Kind.COUNT;
    }
}
