package roundwright.notation;

/** Reads how many times a step is done: "5 sc", "sc 5", "6 x sc", "sc (12), …", a number that stands for a step. */
final class StepNumber {
    /** The dash that parts words, as before a count: "dec—20 sts". */
    private static final char LONG_DASH = '\u2014';

    private final Reading line;
    private final Cursor cursor;
    /** Whether the number stood in brackets at the line's end, where it may be the count. */
    boolean bracketed;
    /** Whether the number before the step said how often it is done ("6 x sc"). */
    boolean times;

    StepNumber(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    /** "5", "a", "6 x"; 0 where none. */
    int before() {
        times = false;
        bracketed = false;
        if (cursor.is(Meaning.COUNTER) && (cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.EACH))) {
            return cursor.next().value();
        }
        if (!cursor.is(Meaning.NUMBER)) {
            return 0;
        }
        int number = cursor.next().value();
        overAdjective();
        if (cursor.is(Meaning.TIMES) && isCore(1)) {
            cursor.next();
            times = true;
        } else if (cursor.is(Meaning.DASH) && !cursor.peek().spaced() && isCore(1)
                || cursor.is(Meaning.MORE) && isCore(1)) {
            cursor.next();
        }
        return number;
    }

    /** "6 normal sc", "6 sts sc". */
    private void overAdjective() {
        int ahead = 0;
        while (cursor.is(ahead, Meaning.FILLER) || cursor.is(ahead, Meaning.ST) || cursor.is(ahead, Meaning.PLAIN)) {
            ahead++;
        }
        if (ahead > 0 && cursor.is(ahead, Meaning.STITCH)) {
            cursor.at += ahead;
        }
    }

    boolean isCore(int ahead) {
        return cursor.peek(ahead).meaning().makes() || cursor.is(ahead, Meaning.TOG) || cursor.is(ahead, Meaning.HOLD);
    }

    /** "(2, inc) x 6", "mr, 6", "5) 12": a number that stands for so many stitches. */
    boolean alone() {
        if (cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.SHUT)) {
            return !line.worked && line.labelled;
        }
        boolean last = cursor.done()
                || cursor.peek().meaning().parts() && cursor.peek(1).is(Meaning.FINISH);
        if (last && !line.ring && wordsBefore()) {
            return false;
        }
        if (last || cursor.is(Meaning.EQUALS)) {
            return !line.worked && (line.ring || line.labelled) || line.worked && cursor.is(Meaning.EQUALS);
        }
        if (numbersToStep()) {
            return true;
        }
        if (cursor.is(Meaning.STOP) && shapes(cursor.peek(1).meaning())) {
            return true;
        }
        boolean marked = cursor.is(Meaning.COMMA) || cursor.is(Meaning.SHUT);
        if (line.numbersAreStitches && line.labelled && (marked || cursor.is(Meaning.SLASH))) {
            return true;
        }
        return marked
                && (line.worked
                        || cursor.peek(-2).is(Meaning.OPEN)
                        || cursor.peek(-2).is(Meaning.STAR)
                        || cursor.peek(1).meaning().makes());
    }

    /** "increasing 6 dc evenly", "decreasing 6 dc." : so many shapings, and no other step. */
    private boolean ofStitches() {
        Token verb = cursor.peek(-1);
        boolean telling = line.text.startsWith("ing", Math.max(0, verb.end() - 3));
        boolean stitch = cursor.is(1, Meaning.STITCH);
        Meaning after = cursor.peek(2).meaning();
        boolean ends = after == Meaning.FINISH || after == Meaning.OPEN || after == Meaning.EQUALS || after.parts();
        return stitch && (after == Meaning.EVENLY || telling && ends || inRound());
    }

    /** Whether "in the round" stands after a number and its stitch. */
    private boolean inRound() {
        return cursor.is(2, Meaning.IN) && cursor.is(3, Meaning.ROUND) && !cursor.is(4, Meaning.NUMBER);
    }

    /** Whether words that were not read as steps stand between the label and the number. */
    private boolean wordsBefore() {
        for (int place = line.body - cursor.at; place < -1; place++) {
            Meaning meaning = cursor.peek(place).meaning();
            boolean nothing = meaning.parts() || meaning == Meaning.FILLER || meaning == Meaning.WORK;
            if (!nothing && meaning != Meaning.THE && meaning != Meaning.EQUALS) {
                return true;
            }
        }
        return false;
    }

    /** Whether several words that nobody knows stand between the label and the step: then a number without a stitch is none. */
    boolean strangeBefore() {
        int strange = 0;
        for (int place = line.body - cursor.at; place < 0; place++) {
            strange += cursor.is(place, Meaning.UNKNOWN) ? 1 : 0;
        }
        return strange > 1;
    }

    private static boolean shapes(Meaning meaning) {
        return meaning == Meaning.INC || meaning == Meaning.DEC || meaning == Meaning.INVDEC;
    }

    /** "1, 1, 2 in one": numbers alone up to one that is a step. */
    private boolean numbersToStep() {
        int ahead = 0;
        while (cursor.is(ahead, Meaning.COMMA)) {
            int number = cursor.is(ahead + 1, Meaning.AND) ? ahead + 2 : ahead + 1;
            if (!cursor.is(number, Meaning.NUMBER)) {
                break;
            }
            ahead = number + 1;
        }
        boolean step = cursor.is(ahead, Meaning.IN)
                || cursor.is(ahead, Meaning.TOG)
                || cursor.peek(ahead).meaning().makes();
        return ahead > 0 && step;
    }

    /** "sc 5", "sc5", "ch-3"; 0 where none. A number that says how often ("x 5", "5 times") is not read here. */
    int after() {
        int before = cursor.at;
        boolean hyphen = cursor.is(Meaning.DASH)
                && !cursor.peek().spaced()
                && cursor.peek().value() != LONG_DASH;
        if (hyphen && cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.STITCH)) {
            return 0;
        }
        if (hyphen) {
            cursor.next();
        }
        if (cursor.is(Meaning.NUMBER) && shapes(cursor.peek(-1).meaning()) && ofStitches()) {
            int number = cursor.peek().value();
            cursor.at += inRound() ? 4 : 2;
            return number;
        }
        int placed = timesThenPlace();
        placed = placed > 0 ? placed : inBrackets();
        if (placed > 0) {
            return placed;
        }
        boolean count = cursor.is(2, Meaning.NUMBER) && !cursor.is(3, Meaning.ST) && !cursor.is(3, Meaning.TOTAL);
        boolean often = cursor.is(1, Meaning.TIMES) && !count || cursor.is(1, Meaning.MORE);
        if (!cursor.is(Meaning.NUMBER) || often || beginsNext()) {
            cursor.at = before;
            return 0;
        }
        int number = cursor.next().value();
        overRange();
        cursor.skip(Meaning.ST);
        return number;
    }

    /** "sc 2-3": how many is left to whoever works it, so there is no count. */
    private void overRange() {
        boolean range = cursor.is(Meaning.DASH)
                && !cursor.peek().spaced()
                && cursor.is(1, Meaning.NUMBER)
                && !cursor.peek(1).spaced();
        if (range && !cursor.peek(2).meaning().makes()) {
            line.doubt(cursor.peek(1).span());
            cursor.at += 2;
        }
    }

    /** "sc (12), then …": how many, in brackets that cannot be the count; 0 where it is not so. */
    private int inBrackets() {
        boolean number = cursor.is(Meaning.OPEN)
                && cursor.is(1, Meaning.NUMBER)
                && cursor.is(2, Meaning.SHUT)
                && cursor.peek(-1).meaning().makes();
        Meaning after = cursor.peek(3).meaning();
        boolean goesOn = after.parts()
                || after == Meaning.AND
                || after == Meaning.SHUT
                || after == Meaning.EQUALS
                || after == Meaning.OPEN && cursor.is(4, Meaning.NUMBER);
        boolean last = line.numbersInBrackets && (after == Meaning.FINISH || after.parts() && !stepsAhead(3));
        if (!number || !last && (!goesOn || after != Meaning.SHUT && !stepsAhead(3))) {
            return 0;
        }
        bracketed = last;
        line.numbersInBrackets = true;
        cursor.at += 3;
        return cursor.peek(-2).value();
    }

    /** Whether another step, or a count, comes after. */
    private boolean stepsAhead(int from) {
        for (int ahead = from; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            boolean count = cursor.is(ahead, Meaning.NUMBER) && !cursor.is(ahead - 1, Meaning.CHAIN);
            if (count
                    || cursor.peek(ahead).meaning().makes()
                            && !cursor.is(ahead, Meaning.SLIP)
                            && !cursor.is(ahead, Meaning.CHAIN)) {
                return true;
            }
        }
        return false;
    }

    /** "x 6 in ring", "6 times in next st", "twice in next st": how many, and then where; 0 where it is not so. */
    private int timesThenPlace() {
        boolean counter = cursor.is(Meaning.COUNTER);
        boolean before = cursor.is(Meaning.TIMES) && cursor.is(1, Meaning.NUMBER);
        boolean behind = cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.TIMES);
        int length = counter ? 1 : 2;
        if (!(before || behind || counter) || !cursor.is(length, Meaning.IN)) {
            return 0;
        }
        int number = before ? cursor.peek(1).value() : cursor.peek().value();
        cursor.at += length;
        return number;
    }

    /** Whether the number at the cursor belongs to the step after it: "sc 2 inc" written without marks between. */
    private boolean beginsNext() {
        Token number = cursor.peek();
        Token after = cursor.peek(1);
        boolean numbered =
                cursor.is(2, Meaning.NUMBER) && !cursor.peek(3).meaning().makes() && !cursor.is(3, Meaning.ST);
        if (shapes(after.meaning()) && numbered) {
            return false;
        }
        if (after.is(Meaning.ST)) {
            return cursor.is(2, Meaning.IN) || cursor.is(2, Meaning.EACH);
        }
        if (!after.meaning().makes()
                && !after.is(Meaning.ST)
                && !(after.is(Meaning.HOLD) && cursor.peek(2).meaning().makes())) {
            return false;
        }
        return number.spaced();
    }
}
