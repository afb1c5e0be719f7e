package roundwright.notation;

import java.util.function.BooleanSupplier;
import roundwright.notation.WrittenLine.Count;

/** Finds the count that a line states: "(18)", "= 18 sts", "– 18", "you should have 18 stitches", "30 dc, 10 ch-1 sps". */
final class CountReader {
    /** A sentence of fewer stitches is hardly the count of a round. */
    private static final int SMALLEST = 4;

    private static final int LONGEST_EQUATION = 12;

    /** What stands before a count and its colon has no more words. */
    private static final int LONGEST_TITLE = 5;

    private final Reading line;
    private final Cursor cursor;

    private final Figures figures;
    private final CountEnds ends;

    CountReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
        this.figures = new Figures(cursor);
        this.ends = new CountEnds(cursor);
    }

    /** Reads over a count that stands at the cursor; false, and the cursor unmoved, where none does. */
    boolean read() {
        int begin = cursor.at;
        boolean found = switch (cursor.peek().meaning()) {
            case OPEN -> bracketed();
            case EQUALS -> marked();
            case YOUHAVE, TOTAL -> said();
            case NUMBER -> bare();
            case DASH, COLON -> dashed();
            case MARK -> cursor.peek().value() == '_' && line.worked && dashed();
            case STAR, STARS -> starred();
            case ST, UNKNOWN -> titled();
            case ENDING -> endsWith();
            default -> false;
        };
        if (!found) {
            cursor.at = begin;
            return false;
        }
        keep(cursor.since(begin));
        line.counted = true;
        return true;
    }

    /** Whether a bracket at the cursor holds a count; nothing is read over or kept. */
    boolean ahead() {
        int begin = cursor.at;
        boolean found = cursor.is(Meaning.OPEN) && bracketed();
        cursor.at = begin;
        return found;
    }

    private void keep(Span span) {
        if (figures.total > 0) {
            line.counts.add(new Count(figures.total, span, true));
        }
        if (figures.parts > 1 && figures.total == figures.all) {
            return;
        }
        if (figures.stitches > 0 && figures.stitches != figures.total || figures.ofStitches && figures.total == 0) {
            line.counts.add(new Count(figures.stitches, span, true, figures.ofGroups && figures.parts == 1));
        }
        if (figures.all != figures.stitches && figures.all > 0 && figures.all != figures.total) {
            line.counts.add(new Count(figures.all, span, true, !figures.ofStitches));
        }
    }

    private boolean bracketed() {
        int begin = cursor.at;
        if (leads()) {
            figures.only(cursor.peek(1).value());
            cursor.at += 3;
            return true;
        }
        cursor.next();
        cursor.skip(Meaning.OPEN, Meaning.MARK);
        overTitle();
        overCounting();
        overWords();
        overChange();
        overEquation();
        if (!figures.read() || !shut()) {
            return false;
        }
        cursor.skip(Meaning.SHUT);
        if ((cursor.is(Meaning.COLON) || figures.named && cursor.is(Meaning.DASH)) && !line.worked) {
            return !timesAhead();
        }
        if (figures.ofSts && line.worked && !cursor.is(Meaning.TIMES) && !cursor.is(1, Meaning.TIMES)) {
            return true;
        }
        return ends.endsHere()
                && (line.stitches || cursor.peek(begin - cursor.at + 1).is(Meaning.EQUALS));
    }

    /** "(1 dc, 1 inc) - do this 6 times": whether the clause after the mark says how often, and names no step. */
    private boolean timesAhead() {
        for (int ahead = 1; ; ahead++) {
            Meaning meaning = cursor.peek(ahead).meaning();
            if (meaning == Meaning.TIMES) {
                Meaning next = cursor.peek(ahead + 1).meaning();
                return next.parts() || next == Meaning.FINISH || next == Meaning.OPEN || next == Meaning.EQUALS;
            }
            if (meaning.makes() || meaning.parts() || meaning == Meaning.FINISH) {
                return false;
            }
        }
    }

    /** "sts: 18", or "sts 18" as a last sentence. */
    private boolean titled() {
        boolean last = cursor.is(Meaning.ST) && cursor.is(-1, Meaning.STOP) && cursor.is(1, Meaning.NUMBER);
        cursor.at += last ? 1 : 0;
        boolean count = line.worked && (last || overTitle()) && figures.read();
        return count && figures.parts == 1 && ends.nothingAfter(0);
    }

    /** "ends with 18", as the last words. */
    private boolean endsWith() {
        cursor.next();
        cursor.skip(Meaning.WITH);
        boolean number = line.worked && cursor.is(Meaning.NUMBER) && !unitAhead();
        return number && figures.read() && ends.nothingAfter(0);
    }

    /** Over "sts:", "# sts =", "T =" before the count. */
    private boolean overTitle() {
        boolean letter = cursor.is(Meaning.UNKNOWN)
                && cursor.peek().end() - cursor.peek().start() == 1;
        boolean title = cursor.is(Meaning.ST) && (cursor.is(1, Meaning.COLON) || cursor.is(1, Meaning.EQUALS))
                || letter && cursor.is(1, Meaning.EQUALS);
        cursor.at += title ? 2 : 0;
        return title;
    }

    /** "*18*", "**(18 sts)**": a count in bold or italics. */
    private boolean starred() {
        if (!line.worked || depthOfStars() == 0) {
            return false;
        }
        cursor.skip(Meaning.STAR, Meaning.STARS);
        boolean found = cursor.is(Meaning.OPEN) ? bracketed() : figures.read();
        boolean shut = cursor.is(Meaning.STAR) || cursor.is(Meaning.STARS);
        cursor.skip(Meaning.STAR, Meaning.STARS);
        return found && shut && ends.endsHere() && !cursor.is(Meaning.NUMBER);
    }

    /** Whether asterisks close again within a few words: how many words on; 0 where they do not. */
    private int depthOfStars() {
        for (int ahead = 2; ahead < 7; ahead++) {
            if (cursor.is(ahead, Meaning.STAR) || cursor.is(ahead, Meaning.STARS)) {
                return ahead;
            }
        }
        return 0;
    }

    /** Over words without a number and their colon before the one number of a bracket: "[chs counted: 55]". */
    private void overWords() {
        int colon = 0;
        while (colon < LONGEST_TITLE && !cursor.peek(colon).meaning().parts() && !cursor.is(colon, Meaning.NUMBER)) {
            colon++;
        }
        boolean only = cursor.is(colon, Meaning.COLON)
                && cursor.is(colon + 1, Meaning.NUMBER)
                && cursor.is(colon + 2, Meaning.SHUT);
        cursor.at += only ? colon + 1 : 0;
    }

    /** Over "counting ch 3 as 1 dc," before the count. */
    private void overCounting() {
        int mark = 0;
        while (cursor.is(Meaning.COUNTSAS) && !cursor.is(mark, Meaning.SHUT) && !cursor.is(mark, Meaning.FINISH)) {
            if (cursor.is(mark, Meaning.COMMA) && cursor.is(mark + 1, Meaning.NUMBER)) {
                cursor.at += mark + 1;
                return;
            }
            mark++;
        }
    }

    /** "10 x 2 =" before the count. */
    private void overEquation() {
        if (!cursor.is(Meaning.NUMBER)) {
            return;
        }
        for (int ahead = 1; ahead < LONGEST_EQUATION && !cursor.is(ahead, Meaning.SHUT); ahead++) {
            if (cursor.is(ahead, Meaning.EQUALS) && cursor.is(ahead + 1, Meaning.NUMBER)) {
                cursor.at += ahead + 1;
                return;
            }
        }
    }

    /** "Rnd 3: [18] (sc, inc) around": the count first, in brackets. */
    private boolean leads() {
        boolean alone = cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.SHUT) && line.labelled && !line.worked;
        int first = cursor.is(3, Meaning.DASH) && cursor.peek(3).spaced() || cursor.is(3, Meaning.COLON) ? 4 : 3;
        int step = cursor.is(first, Meaning.NUMBER) ? first + 1 : first;
        boolean steps = cursor.peek(step).meaning().makes()
                || cursor.is(first, Meaning.OPEN)
                || cursor.is(first, Meaning.STAR)
                || cursor.is(first, Meaning.MAGIC);
        return alone && steps;
    }

    /** "+6," before the count. */
    private void overChange() {
        if (cursor.is(Meaning.ROUND) && cursor.is(1, Meaning.NUMBER)) {
            cursor.next();
            cursor.skip(Meaning.NUMBER, Meaning.DASH, Meaning.TO, Meaning.AND);
            cursor.accept(Meaning.COLON);
        }
        boolean signed = cursor.is(Meaning.AND) || cursor.is(Meaning.DASH);
        if (signed
                && cursor.is(1, Meaning.NUMBER)
                && (cursor.is(2, Meaning.COMMA)
                        || cursor.is(2, Meaning.SEMICOLON)
                        || cursor.is(2, Meaning.EQUALS)
                        || cursor.is(2, Meaning.SLASH))) {
            cursor.at += 3;
        }
    }

    /** The bracket's end; over a remark after a count with its unit ("18 sts - it curls"); or the line's end. */
    private boolean shut() {
        cursor.skip(Meaning.MARK);
        boolean mistyped = cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.FINISH);
        if (mistyped) {
            cursor.next();
        }
        if (cursor.is(Meaning.STOP) && cursor.is(1, Meaning.SHUT)) {
            cursor.next();
        }
        if (mistyped || cursor.accept(Meaning.SHUT) || cursor.done()) {
            return true;
        }
        boolean remark = toldFurther()
                || figures.named && (cursor.is(Meaning.COUNTSAS) || includes())
                || figures.named && cursor.peek().meaning().parts();
        while (remark && !cursor.done() && !cursor.is(Meaning.SHUT)) {
            if (cursor.next().meaning().makes() && !figures.ofSts && !figures.settled) {
                return false;
            }
        }
        return remark && (cursor.accept(Meaning.SHUT) || cursor.done());
    }

    private boolean includes() {
        return cursor.is(Meaning.UNKNOWN)
                && line.text.regionMatches(true, cursor.peek().start(), "incl", 0, "incl".length());
    }

    /** "(32: 16 dc + 16 ch)", "(18 - 6 more again)": what follows a figure in its bracket tells more of it. */
    private boolean toldFurther() {
        boolean mark = cursor.is(Meaning.COLON)
                || cursor.is(Meaning.DASH) && cursor.peek().spaced();
        boolean range = cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.SHUT);
        for (int ahead = 1; mark && !cursor.is(ahead, Meaning.SHUT) && !cursor.is(ahead, Meaning.FINISH); ahead++) {
            mark = switch (cursor.peek(ahead).meaning()) {
                case TIMES, REPEAT, IN, EACH, OPEN, STAR -> false;
                default -> true;
            };
        }
        boolean further = mark && !range || cursor.is(Meaning.COMMA) && cursor.is(1, Meaning.COUNTSAS);
        figures.settled |= further;
        return further;
    }

    private boolean marked() {
        cursor.skip(Meaning.EQUALS, Meaning.OPEN);
        overEquation();
        boolean found = figures.read();
        cursor.accept(Meaning.SHUT);
        return found;
    }

    private boolean said() {
        cursor.skip(
                Meaning.YOUHAVE,
                Meaning.TOTAL,
                Meaning.COLON,
                Meaning.EQUALS,
                Meaning.OF,
                Meaning.THE,
                Meaning.NOW,
                Meaning.OPEN,
                Meaning.DASH,
                Meaning.MARK,
                Meaning.YOUHAVE);
        boolean found = line.stitches && figures.read();
        cursor.accept(Meaning.SHUT);
        return found;
    }

    /** "18 sts", "18" at the very end. */
    private boolean bare() {
        if (!line.stitches || cursor.at == 0) {
            return false;
        }
        Meaning after = cursor.peek(1).meaning();
        boolean title = cursor.is(-2, Meaning.UNKNOWN) && cursor.is(-3, Meaning.OPEN);
        boolean thing = cursor.is(-1, Meaning.UNKNOWN) && (cursor.is(-2, Meaning.IN) || cursor.is(-2, Meaning.THE));
        if (thing || RepeatWords.behindBracket(cursor) && !title) {
            return false;
        }
        if (line.worked && cursor.is(-1, Meaning.STOP) && (listOfCounts() || groupsOf())) {
            return true;
        }
        boolean alone = ends.nothingAfter(1) && (line.worked || !line.ring);
        boolean named = after == Meaning.ST && !placeAfter(2) && !cursor.is(2, Meaning.STITCH);
        boolean left = after == Meaning.REMAINING && line.worked && ends.nothingAfter(2);
        if (!alone
                && !named
                && !left
                && after != Meaning.TOTAL
                && !(after == Meaning.YOUHAVE && !cursor.is(2, Meaning.NUMBER))) {
            return false;
        }
        return figures.read();
    }

    /** ". 16 dc, 16 ch-1 spaces" as the last words. */
    private boolean listOfCounts() {
        int begin = cursor.at;
        boolean found = figures.read() && figures.parts > 1 && ends.nothingAfter(0);
        cursor.at = found ? cursor.at : begin;
        return found;
    }

    /** ". 4 groups of 3 dc" as the last words. */
    private boolean groupsOf() {
        int begin = cursor.at;
        boolean groups = cursor.is(1, Meaning.PETAL) && (cursor.is(2, Meaning.OF) || ends.nothingAfter(2));
        boolean found = groups && figures.read() && ends.nothingAfter(0);
        cursor.at = found ? cursor.at : begin;
        return found;
    }

    private boolean placeAfter(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case EACH, PER -> !cursor.is(ahead + 1, Meaning.ROUND);
            case IN, TOG, BETWEEN, TIMES -> true;
            default -> false;
        };
    }

    /** "Rnd 3: 18 - (sc, inc) x 6": the count before the steps. */
    boolean first() {
        boolean change = cursor.is(Meaning.AND) && cursor.peek().value() == '+' && cursor.is(1, Meaning.NUMBER);
        if (change && !cursor.peek(1).spaced() && !cursor.peek(2).meaning().makes()) {
            cursor.at += 2;
            return false;
        }
        int titled = cursor.at;
        cursor.skip(Meaning.TOTAL, Meaning.YOUHAVE);
        boolean told = numberFirst();
        cursor.at = told ? cursor.at : titled;
        return told;
    }

    private boolean numberFirst() {
        int mark = cursor.is(1, Meaning.ST) ? 2 : 1;
        boolean dash = cursor.is(mark, Meaning.DASH)
                && cursor.peek(mark).spaced()
                && (mark > 1 || !cursor.is(mark + 1, Meaning.NUMBER))
                && cursor.peek(mark + 1).spaced();
        boolean colon = mark > 1 && cursor.is(mark, Meaning.COMMA)
                || (mark > 1 || line.labelled) && cursor.is(mark, Meaning.COLON);
        boolean ahead =
                cursor.is(Meaning.NUMBER) && (dash || colon || cell(mark)) && !cursor.is(mark + 1, Meaning.FINISH);
        if (ahead) {
            Token number = cursor.next();
            line.counts.add(new Count(number.value(), number.span(), true));
            cursor.at += mark;
        }
        return ahead;
    }

    /** "3;18;(sc, inc) x 6": whether the number stands between two such marks, as in a table. */
    private boolean cell(int mark) {
        Token after = cursor.peek(mark);
        Token before = cursor.peek(-1);
        boolean parts = after.is(Meaning.SEMICOLON) || after.is(Meaning.MARK) && after.value() == '|';
        return parts && before.is(after.meaning()) && before.value() == after.value();
    }

    /**
     * "…, 18 sc" as the last words: perhaps the count. Adds it as one that is not sure; the cursor stays.
     *
     * @param whole whether what stands before makes a whole round: then words after a full stop are surely the count
     */
    boolean perhaps(BooleanSupplier whole) {
        boolean stop =
                cursor.is(-1, Meaning.STOP) && line.text.charAt(cursor.peek(-1).start()) == '.';
        boolean sentence = line.worked && stop && cursor.peek().value() >= SMALLEST;
        int begin = cursor.at;
        boolean named = (line.worked || line.taken) && cursor.is(Meaning.NUMBER) && unitAhead();
        if (!named) {
            return false;
        }
        int number = cursor.next().value();
        cursor.next();
        cursor.skip(Meaning.ST, Meaning.FILLER);
        int unit = cursor.at;
        cursor.skip(Meaning.TOTAL, Meaning.REMAINING, Meaning.NOW);
        boolean told = cursor.at > unit;
        boolean last = ends.nothingAfter(0);
        if (last) {
            boolean sure = line.taken || told || sentence && whole.getAsBoolean();
            line.counts.add(new Count(number, cursor.since(begin), sure));
        }
        cursor.at = begin;
        return last;
    }

    private boolean unitAhead() {
        Meaning after = cursor.peek(1).meaning();
        return after == Meaning.STITCH || after == Meaning.SPECIAL || after == Meaning.SLIP;
    }

    /** "– 18", "- 18 sc" as the last thing in the line. */
    private boolean dashed() {
        if (!line.stitches) {
            return false;
        }
        cursor.next();
        cursor.skip(Meaning.DASH, Meaning.OPEN);
        boolean found = figures.read();
        cursor.accept(Meaning.SHUT);
        return found && (figures.parts > 0) && ends.nothingAfter(0);
    }
}
