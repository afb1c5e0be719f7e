package roundwright.notation;

import java.util.Optional;
import roundwright.notation.WrittenLine.Label;

/** Finds the round number or range that a line begins with, in any of the ways that writers have. */
final class LabelReader {
    /** A label never stands further in than this. */
    private static final int FURTHEST = 7;

    /** Words before a label and its colon are no more than this. */
    private static final int LONGEST_HEADING = 12;

    /** More stitches do not go into each stitch of a round. */
    private static final int MOST_IN_ONE = 4;

    /** The dash that parts words, and joins no numbers. */
    private static final char LONG_DASH = '\u2014';

    private final Cursor cursor;
    private final LabelHeadings headings;

    LabelReader(Cursor cursor) {
        this.cursor = cursor;
        this.headings = new LabelHeadings(cursor);
    }

    /** Reads over the label if there is one; the cursor is then at the first token of what is to be done. */
    Optional<Label> read() {
        int begin = cursor.at;

        for (int skipped = 0; skipped <= FURTHEST && mayStandBefore(begin, skipped); skipped++) {
            cursor.at = begin + skipped;
            Label label = labelHere(skipped == 0 || afterMark());
            if (label != null
                    && (afterMark(begin, skipped)
                            || heads()
                            || cursor.peek(begin + skipped - 1 - cursor.at).is(Meaning.COLON))
                    && (skipped == 0 || !cursor.done() && !(cursor.is(Meaning.STOP) && cursor.is(1, Meaning.FINISH)))) {
                headings.afterLabel();
                return Optional.of(label);
            }
        }
        cursor.at = begin;
        Label step = step(begin);
        Label label = step == null ? afterHeading(begin) : step;
        if (label == null) {
            headings.alone();
        }
        return Optional.ofNullable(label);
    }

    /** "Join the first two, R4: …", "Center dot. Round 1: …": a label with its colon after a sentence or a clause that tells where. */
    private Label afterHeading(int begin) {
        for (int place = begin;
                place < begin + LONGEST_HEADING
                        && !cursor.peek(place - cursor.at).is(Meaning.FINISH);
                place++) {
            Meaning mark = cursor.peek(place - cursor.at).meaning();
            boolean step = mark == Meaning.NUMBER
                    && cursor.peek(place + 1 - cursor.at).meaning().makes();
            if (mark.makes() || step || mark == Meaning.COLON) {
                break;
            }
            if (mark == Meaning.COMMA || mark == Meaning.STOP) {
                cursor.at = place + 1;
                Label label = named(place + 1);
                if (label != null && cursor.is(Meaning.COLON)) {
                    headings.afterLabel();
                    return label;
                }
                cursor.at = begin;
            }
        }
        cursor.at = begin;
        return null;
    }

    /** "Step 4:", "No. 4:", where no round is named; null, as for every kind of label, where there is none. */
    private Label step(int begin) {
        boolean numbered = cursor.accept(Meaning.STEP) || cursor.is(1, Meaning.STOP) && cursor.accept(Meaning.NOT);
        cursor.skip(Meaning.STOP);
        if (numbered && cursor.is(Meaning.NUMBER)) {
            Label label = range(begin, true);
            headings.afterLabel();
            return label;
        }
        cursor.at = begin;
        return null;
    }

    /** "4 sc around", "4,sc around", in a pattern whose lines begin with their numbers and no mark of a label. */
    Optional<Label> numberAlone() {
        if (!cursor.is(Meaning.NUMBER) || cursor.at > 0) {
            return Optional.empty();
        }
        Token number = cursor.next();
        int last = number.value();
        boolean spans = cursor.is(Meaning.DASH) || cursor.is(Meaning.TO);
        if (spans && cursor.is(1, Meaning.NUMBER) && cursor.peek(1).value() > last) {
            cursor.next();
            last = cursor.next().value();
        }
        while (cursor.peek().meaning().parts()) {
            cursor.next();
        }
        return Optional.of(new Label(number.value(), last, number.span()));
    }

    /** Whether nothing but marks stands before the label. */
    private boolean afterMark(int begin, int skipped) {
        for (int i = 0; i < skipped; i++) {
            Meaning before = cursor.peek(begin + i - cursor.at).meaning();
            if (!before.parts()
                    && before != Meaning.STAR
                    && before != Meaning.STARS
                    && before != Meaning.OPEN
                    && before != Meaning.SHUT) {
                return false;
            }
        }
        return true;
    }

    /** Whether a label in the midst of words is followed by a mark or by work: "Body R3 sc …", not "Round 3 is …". */
    private boolean heads() {
        return switch (cursor.peek().meaning()) {
            case UNKNOWN, NOTE, FINISH, NOT -> false;
            case STOP, MARK -> !cursor.is(1, Meaning.FINISH);
            default -> true;
        };
    }

    private boolean afterMark() {
        for (int back = -1; cursor.at + back >= 0; back--) {
            Meaning before = cursor.peek(back).meaning();
            if (before != Meaning.MARK && before != Meaning.DASH && before != Meaning.STAR && before != Meaning.STARS) {
                return false;
            }
        }
        return true;
    }

    private boolean mayStandBefore(int begin, int skipped) {
        if (skipped == 0) {
            return true;
        }
        cursor.at = begin + skipped - 1;
        return switch (cursor.peek().meaning()) {
            case UNKNOWN,
                    COLOUR,
                    WITH,
                    COLON,
                    DASH,
                    MARK,
                    COMMA,
                    STOP,
                    STAR,
                    STARS,
                    OPEN,
                    SHUT,
                    STEP,
                    SLASH,
                    THE,
                    AND,
                    START,
                    CONTINUE,
                    FILLER,
                    NUMBER,
                    NOW,
                    SPACE,
                    RING,
                    PETAL,
                    BASE,
                    TOP,
                    FOUNDATION -> true;
            case NOTE -> cursor.peek().feature() == Feature.OTHER;
            default -> false;
        };
    }

    private Label labelHere(boolean bareAllowed) {
        int begin = cursor.at;
        Label label = named(begin);
        label = label == null ? ordinal(begin) : label;
        if (label == null && bareAllowed) {
            label = bracketed(begin);
            label = label == null ? numberFirst(begin) : label;
            label = label == null ? bare(begin) : label;
        }
        return label;
    }

    /** "Rnd 3", "R 8-12", "Rounds 8, 9 and 10", "Rnd #3". */
    private Label named(int begin) {
        cursor.at = begin;
        cursor.skip(Meaning.IN, Meaning.FOR, Meaning.THE, Meaning.FROM);
        if (!cursor.accept(Meaning.ROUND)) {
            return null;
        }
        boolean plural = cursor.since(begin).length() > 1 && plural(begin);
        if (cursor.is(Meaning.COLON) && !cursor.peek(1).spaced()) {
            cursor.next();
        }
        cursor.skip(Meaning.STOP, Meaning.MARK, Meaning.OPEN);
        if (cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
        if (!cursor.is(Meaning.NUMBER)) {
            return null;
        }
        return range(begin, plural);
    }

    private boolean plural(int begin) {
        int length = cursor.peek(begin - cursor.at).end()
                - cursor.peek(begin - cursor.at).start();
        return length == 6 || length == 4 && cursor.at > begin;
    }

    private Label range(int begin, boolean plural) {
        int first = cursor.next().value();
        int last = first;
        boolean spanned = false;
        while (true) {
            int before = cursor.at;
            if (plural && cursor.is(Meaning.NUMBER) && cursor.peek().value() == last + 1 && !stepAfterNumber()) {
                last = cursor.next().value();
                continue;
            }
            overMarkWithin();
            Token dash = cursor.peek();
            boolean spans = dash.is(Meaning.DASH) || dash.is(Meaning.TO);
            boolean foreign = dash.is(Meaning.THE) && cursor.is(1, Meaning.NUMBER) && plural;
            if (!joins(dash) && !foreign || spans && spanned) {
                cursor.at = before;
                break;
            }
            spanned = spans;
            cursor.next();
            cursor.skip(Meaning.THE);
            cursor.skip(Meaning.ROUND, Meaning.STOP, Meaning.AND, Meaning.DASH, Meaning.MARK);
            boolean step = startsStep(dash, plural, first) && !(first > 1 && goesRound());
            if (!cursor.is(Meaning.NUMBER) || cursor.peek().value() <= last || step) {
                cursor.at = before;
                break;
            }
            last = cursor.next().value();
        }
        return new Label(first, last, cursor.since(begin));
    }

    /** Over the mark after the first number of a range: "8.-12.", "8)-12)". */
    private void overMarkWithin() {
        int number = cursor.is(2, Meaning.ROUND) ? 3 : 2;
        boolean shut = cursor.is(Meaning.SHUT)
                && (cursor.is(1, Meaning.DASH) || cursor.is(1, Meaning.TO))
                && cursor.is(number, Meaning.NUMBER)
                && cursor.is(number + 1, Meaning.SHUT);
        if (shut || cursor.is(Meaning.STOP)) {
            cursor.next();
        }
    }

    /** Whether the number at the cursor says how many of a step: "Rnds 5 6 sc", not "Rnds 5 6 7". */
    private boolean stepAfterNumber() {
        Meaning after = cursor.peek(1).meaning();
        return after.makes() || after == Meaning.IN || after == Meaning.TIMES || after == Meaning.ST;
    }

    /** Whether a ring comes within a few words, which only the first round has. */
    private boolean ringAhead() {
        for (int ahead = 1; ahead < FURTHEST; ahead++) {
            if (cursor.is(ahead, Meaning.RING) || cursor.is(ahead, Meaning.MAGIC)) {
                return true;
            }
        }
        return false;
    }

    /** Whether so many stitches would go into each stitch of a round: then the number is the label's, "Rnd 5 - 9 sc in all 24 sts". */
    private boolean goesRound() {
        boolean many = cursor.peek().value() > MOST_IN_ONE && cursor.is(1, Meaning.STITCH);
        int place = cursor.is(2, Meaning.IN) ? 3 : 2;
        return many
                && switch (cursor.peek(place).meaning()) {
                    case EACH, AROUND, TOEND -> true;
                    case NUMBER -> place == 2;
                    default -> false;
                };
    }

    private static boolean joins(Token token) {
        return switch (token.meaning()) {
            case DASH, TO, AND, COMMA, SLASH -> true;
            case IN -> true;
            default -> false;
        };
    }

    /** Whether the number at the cursor begins the first step: "Rnd 3 - 6 dc in ring", "R3, 6 dc". */
    private boolean startsStep(Token dash, boolean plural, int first) {
        Token after = cursor.peek(1);
        boolean step = after.meaning().makes()
                || after.is(Meaning.IN)
                || after.is(Meaning.TIMES)
                || after.is(Meaning.ST)
                || after.is(Meaning.TOG)
                || after.is(Meaning.HOLD);
        boolean close =
                dash.is(Meaning.DASH) && !dash.spaced() && !cursor.peek().spaced();
        boolean spelt = dash.is(Meaning.TO) || dash.is(Meaning.IN);
        boolean longer = dash.value() == LONG_DASH;
        return step && (!plural && !close && !spelt || longer || first == 1 && ringAhead());
    }

    /** "3rd round", "5th-9th rows", "first round". */
    private Label ordinal(int begin) {
        cursor.at = begin;
        cursor.skip(Meaning.FOR, Meaning.IN, Meaning.THE, Meaning.FROM);
        int first = ordinalValue();
        int last = first;
        while (first > 0 && cursor.is(Meaning.COMMA) && cursor.is(1, Meaning.ORDINAL)) {
            cursor.next();
            last = Math.max(last, ordinalValue());
        }
        boolean foreign = cursor.is(Meaning.THE) && cursor.is(1, Meaning.ORDINAL);
        if (first > 0 && (foreign || cursor.is(Meaning.DASH) || cursor.is(Meaning.TO) || cursor.is(Meaning.AND))) {
            int before = cursor.at;
            cursor.skip(Meaning.DASH, Meaning.TO, Meaning.AND, Meaning.THE);
            int upTo = ordinalValue();
            cursor.at = upTo <= last ? before : cursor.at;
            last = Math.max(last, upTo);
        }
        if (first > 0 && cursor.is(Meaning.WORK) && cursor.is(1, Meaning.ROUND)) {
            cursor.next();
        }
        boolean bare = cursor.at > begin
                && (cursor.peek(-1).is(Meaning.ORDINAL) || cursor.is(Meaning.COLON))
                && (cursor.is(Meaning.DASH) || cursor.is(Meaning.COLON));
        boolean turn = cursor.at > begin
                && cursor.is(Meaning.TURN)
                && cursor.peek(1).meaning().parts();
        cursor.at += turn ? 1 : 0;
        if (first == 0 || !bare && !turn && !cursor.accept(Meaning.ROUND)) {
            return null;
        }
        return new Label(first, last, cursor.since(begin));
    }

    private int ordinalValue() {
        if (cursor.is(Meaning.ORDINAL)) {
            return cursor.next().value();
        }
        return cursor.accept(Meaning.FIRST) ? 1 : 0;
    }

    private Label bracketed(int begin) {
        cursor.at = begin;
        boolean before = cursor.is(3, Meaning.ROUND) && cursor.is(4, Meaning.NUMBER);
        if (!before && cursor.accept(Meaning.OPEN) && cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.SHUT)) {
            int number = cursor.next().value();
            cursor.next();
            int last = number;
            if (cursor.is(Meaning.DASH)
                    && cursor.is(1, Meaning.OPEN)
                    && cursor.is(2, Meaning.NUMBER)
                    && cursor.is(3, Meaning.SHUT)) {
                last = Math.max(number, cursor.peek(2).value());
                cursor.at += 4;
            }
            return new Label(number, last, cursor.since(begin));
        }
        return null;
    }

    /** "1 row:". */
    private Label numberFirst(int begin) {
        cursor.at = begin;
        int last = begin;
        boolean dotted = false;
        while (cursor.is(Meaning.NUMBER)) {
            last = cursor.at;
            cursor.next();
            dotted = cursor.is(Meaning.STOP);
            cursor.skip(Meaning.STOP);
            boolean more = cursor.is(Meaning.DASH) && cursor.is(1, Meaning.NUMBER);
            cursor.at += more ? 1 : 0;
        }
        boolean round = cursor.at > begin && cursor.accept(Meaning.ROUND);
        if (!round || !dotted && !cursor.peek().meaning().parts()) {
            return null;
        }
        int first = cursor.peek(begin - cursor.at).value();
        return new Label(first, Math.max(first, cursor.peek(last - cursor.at).value()), cursor.since(begin));
    }

    /** "3.", "3)", "3:", "8-12.", "8.-12.", "10.to 12.". */
    private Label bare(int begin) {
        cursor.at = begin;
        if (!cursor.is(Meaning.NUMBER)) {
            return null;
        }
        boolean time = cursor.is(1, Meaning.COLON)
                && cursor.is(2, Meaning.NUMBER)
                && !cursor.peek(2).spaced();
        if (time
                && cursor.peek(2).end() - cursor.peek(2).start() == 2
                && !cursor.peek(3).meaning().makes()) {
            return null;
        }
        Label label = range(begin, false);
        if (begin > 0 && cursor.peek(begin - cursor.at - 1).is(Meaning.MARK)) {
            return label;
        }
        Token mark = cursor.peek();
        boolean marked = switch (mark.meaning()) {
            case STOP, COLON, SEMICOLON, SHUT, MARK -> true;
            case SLASH -> !mark.spaced() && cursor.peek(1).spaced();
            case DASH -> mark.spaced() || cursor.peek(1).spaced();
            default -> false;
        };
        return marked ? label : null;
    }
}
