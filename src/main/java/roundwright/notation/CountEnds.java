package roundwright.notation;

/** Looks ahead in a line for whether a count ends its work. It moves nothing. */
final class CountEnds {
    private final Cursor cursor;

    CountEnds(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Whether, after some marks, nothing more is worked: the line ends, or joins, or tells of other things. */
    boolean nothingAfter(int ahead) {
        int place = overEachRound(ahead);
        while (cursor.peek(place).meaning().parts()
                || cursor.is(place, Meaning.SHUT)
                || cursor.is(place, Meaning.FILLER)
                || cursor.is(place, Meaning.OPEN) && cursor.is(place + 1, Meaning.SHUT)) {
            place++;
        }
        boolean share = cursor.is(place, Meaning.OPEN)
                && cursor.is(place + 1, Meaning.NUMBER)
                && cursor.is(place + 2, Meaning.PER);
        boolean over = place > ahead || share || cursor.is(place, Meaning.FINISH);
        for (; over && !cursor.is(place, Meaning.FINISH); place++) {
            over = switch (cursor.peek(place).meaning()) {
                case INC, DEC, INVDEC, TOG, SKIP, SPECIAL, TIMES, REPEAT, STAR, STARS, EACH, AROUND, TOEND -> false;
                case YOUHAVE, TOTAL, EQUALS -> !figure(place + 1);
                case STITCH -> joinedTo(place - 1) || cursor.is(place - 1, Meaning.UNKNOWN);
                case NUMBER ->
                    cursor.is(place - 1, Meaning.CHAIN)
                            || cursor.is(place - 1, Meaning.NOTE)
                            || !counts(cursor.peek(place + 1).meaning());
                default -> true;
            };
        }
        return over;
    }

    /** The place after "on each round", "per round"; the same place where no such words stand there. */
    int overEachRound(int place) {
        boolean in = cursor.is(place, Meaning.IN) || cursor.is(place, Meaning.FOR);
        int each = in ? place + 1 : place;
        boolean every = cursor.is(each, Meaning.EACH) || cursor.is(each, Meaning.PER);
        return every && cursor.is(each + 1, Meaning.ROUND) && !cursor.is(each + 2, Meaning.NUMBER) ? each + 2 : place;
    }

    /** The place after "each" as the last word of a list: "24 dc each (24)"; the same place where it is not so. */
    int overEach(int place) {
        boolean ends = cursor.is(place + 1, Meaning.FINISH)
                || cursor.is(place + 1, Meaning.OPEN)
                || cursor.is(place + 1, Meaning.EQUALS)
                || cursor.is(place + 1, Meaning.STOP);
        return cursor.is(place, Meaning.EACH) && ends ? place + 1 : overEachRound(place);
    }

    /** Whether the cursor stands before a count with which the line ends, and nothing but marks before and after it. */
    boolean closes() {
        boolean chain = cursor.is(-1, Meaning.CHAIN) || cursor.is(-1, Meaning.TCHAIN);
        if (chain && cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            return false;
        }
        int place = 0;
        while (cursor.peek(place).meaning().parts()
                || cursor.is(place, Meaning.YOUHAVE)
                || cursor.is(place, Meaning.TOTAL)
                || cursor.is(place, Meaning.STAR)
                || cursor.is(place, Meaning.STARS)) {
            place++;
        }
        boolean found = cursor.is(place, Meaning.NUMBER) && (place > 0 || !partOfPlace());
        int units = 1;
        while (found && unitOrMark(cursor.peek(place + units).meaning())) {
            units++;
        }
        boolean ends = cursor.is(place + units, Meaning.FINISH)
                || place > 0 && cursor.peek(place + units - 1).meaning().parts() && nothingAfter(place + units - 1);
        return found && (place > 0 || units > 1) && ends;
    }

    /** Whether the number at the cursor belongs to the words before it: "the last 2 sts", "rounds 9 and 10". */
    private boolean partOfPlace() {
        return switch (cursor.peek(-1).meaning()) {
            case LAST, FIRST, NEXT, EACH, IN, OF, FOR, BETWEEN, ROUND, AND, AT, TO, CHAIN, REMAINING, MARK -> true;
            default -> cursor.peek(-1).meaning().parts();
        };
    }

    private static boolean unitOrMark(Meaning meaning) {
        return switch (meaning) {
            case ST, STITCH, TOTAL, YOUHAVE, STAR, STARS -> true;
            default -> meaning.parts();
        };
    }

    private static boolean counts(Meaning after) {
        return switch (after) {
            case ST, SHUT, FINISH -> true;
            case CHAIN -> false;
            default -> after.makes();
        };
    }

    private boolean figure(int ahead) {
        int place = ahead;
        while (cursor.is(place, Meaning.COLON) || cursor.is(place, Meaning.OF) || cursor.is(place, Meaning.EQUALS)) {
            place++;
        }
        return cursor.is(place, Meaning.NUMBER);
    }

    private boolean joinedTo(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case FIRST, START, ORDINAL, OF, TOP, THE, LAST, IN, TO -> true;
            default -> false;
        };
    }

    /** Whether a bracket that closes here is not repeated or placed by what follows. */
    boolean endsHere() {
        Meaning after = cursor.peek().meaning();
        boolean goesOn = switch (after) {
            case TIMES, COUNTER, IN, AROUND, TOEND, EACH, REPEAT -> true;
            case NUMBER -> cursor.is(1, Meaning.TIMES);
            case FOR -> cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.TIMES);
            case STAR -> cursor.is(1, Meaning.NUMBER);
            default -> false;
        };
        return !goesOn && !(after == Meaning.COMMA && !nothingAfter(0));
    }
}
