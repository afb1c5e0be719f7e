package roundwright.notation;

/** Reads the figures of a count with their units: "18", "18 sc", "21 tr + 3 ch", "18 stitches in total". */
final class Figures {
    private static final int MOST = 1_000_000_000;

    private final Cursor cursor;

    /** Stitches alone, without chains and spaces. */
    int stitches;
    /** All figures added up. */
    int all;
    /** How many figures there are. */
    int parts;
    /** Whether a unit is named. */
    boolean named;
    /** Whether the unit is the stitch. */
    boolean ofSts;
    /** Whether groups are counted ("8 shells"). */
    boolean ofGroups;
    /** The figure that is said to be the total; 0 where none is. */
    int total;
    /** Whether what stands after it in its bracket only tells more of it. */
    boolean settled;
    /** Whether any figure counts stitches. */
    boolean ofStitches;

    private boolean counted;
    private boolean inTotal;
    /** How many stitches each of what is counted has: "4 groups of 3 dc". */
    private int each;

    Figures(Cursor cursor) {
        this.cursor = cursor;
    }

    /** A count that stands in no list: one figure of stitches. */
    void only(int number) {
        clear();
        stitches = number;
        ofStitches = true;
    }

    private void clear() {
        stitches = 0;
        all = 0;
        parts = 0;
        ofStitches = false;
        named = false;
        settled = false;
        ofSts = false;
        ofGroups = false;
        total = 0;
    }

    /** Reads them at the cursor; false where none stand there. The cursor may then be anywhere. */
    boolean read() {
        clear();
        do {
            int before = cursor.at;
            cursor.skip(
                    Meaning.EQUALS,
                    Meaning.YOUHAVE,
                    Meaning.TOTAL,
                    Meaning.NOW,
                    Meaning.COLON,
                    Meaning.DASH,
                    Meaning.THE,
                    Meaning.OF,
                    Meaning.WORK,
                    Meaning.FILLER);
            boolean jammed =
                    cursor.is(Meaning.ORDINAL) && cursor.peek().value() % 10 == 1 && cursor.is(1, Meaning.SHUT);
            if (!cursor.is(Meaning.NUMBER) && !jammed) {
                cursor.at = before;
                return parts > 0 && cursor.peek(-1).is(Meaning.AND) == false;
            }
            int number = cursor.next().value();
            if (!unit(number)) {
                return false;
            }
        } while (another());
        sumAfterMark();
        return true;
    }

    /** "16 dc, 16 ch-1 sps: 32", "30 dc, 30 ch-1 sps = 60": what all of them make together. */
    private void sumAfterMark() {
        boolean mark = parts > 1 && (cursor.is(Meaning.COLON) || cursor.is(Meaning.EQUALS));
        int end = cursor.is(2, Meaning.ST) ? 3 : 2;
        boolean last = cursor.is(end, Meaning.SHUT)
                || cursor.is(end, Meaning.FINISH)
                || cursor.is(end, Meaning.STOP) && cursor.is(end + 1, Meaning.FINISH);
        if (mark && cursor.is(1, Meaning.NUMBER) && last) {
            altogether(cursor.peek(1).value());
            cursor.at += end;
        }
    }

    private void altogether(int sum) {
        total = sum;
        stitches = sum;
        all = sum;
        ofStitches = true;
    }

    private boolean another() {
        int before = cursor.at;
        if (cursor.is(Meaning.COMMA) && signed(1)) {
            cursor.at += 3;
            return false;
        }
        cursor.skip(Meaning.COMMA, Meaning.AND, Meaning.SLASH, Meaning.WITH);
        if (cursor.at > before
                && cursor.is(Meaning.NUMBER)
                && !cursor.is(1, Meaning.TIMES)
                && !cursor.is(1, Meaning.ROUND)) {
            return true;
        }
        cursor.at = before;
        return false;
    }

    /** "+6", "-6": how many more or fewer than in the round below. */
    private boolean signed(int ahead) {
        return (cursor.is(ahead, Meaning.AND) || cursor.is(ahead, Meaning.DASH))
                && cursor.is(ahead + 1, Meaning.NUMBER)
                && !cursor.peek(ahead + 1).spaced();
    }

    private boolean unit(int number) {
        parts++;
        counted = true;
        inTotal = false;
        each = 1;
        if (cursor.is(Meaning.DASH)
                && (cursor.is(1, Meaning.ST) || cursor.peek(1).meaning().makes())) {
            cursor.next();
        }
        Unit unit = Unit.MORE;
        boolean bare = true;
        while (unit == Unit.MORE) {
            bare &= cursor.is(Meaning.ST)
                    || cursor.peek().meaning().parts()
                    || cursor.is(Meaning.SHUT)
                    || cursor.done();
            unit = unitWord();
        }
        boolean whole = parts > 2 && number == all && !ofGroups && bare;
        if (unit == Unit.ENDS && whole) {
            altogether(number);
        } else if (unit == Unit.ENDS) {
            count((int) Math.min(MOST, (long) number * each));
        }
        return unit != Unit.NO_COUNT;
    }

    /** What a word after a count says: more of its unit, its end, that it is left out, or that it is no count. */
    private enum Unit {
        MORE,
        ENDS,
        LEFT_OUT,
        NO_COUNT
    }

    private Unit unitWord() {
        return switch (cursor.peek().meaning()) {
            case SPECIAL -> {
                boolean picots = cursor.peek().name() == StitchName.PICOT && parts > 1;
                counted &= !picots;
                ofGroups = true;
                named = true;
                yield over(1);
            }
            case ST, STITCH, SLIP -> {
                ofSts |= cursor.next().is(Meaning.ST);
                named = true;
                yield Unit.MORE;
            }
            case FILLER, REMAINING, OF, NOW, AROUND, THE -> over(1);
            case PER, EACH -> perWhat();
            case CHAIN -> uncounted(cursor.is(1, Meaning.DASH) && cursor.is(2, Meaning.NUMBER) ? 3 : 1);
            case NUMBER -> numberAfter();
            case CHAINSPACE, SPACE, PETAL -> uncounted(1);
            case TOTAL, YOUHAVE -> {
                boolean next = cursor.is(Meaning.YOUHAVE) && cursor.is(1, Meaning.NUMBER);
                inTotal |= !next;
                yield next ? Unit.ENDS : over(1);
            }
            case AT, TOEND, ENDING -> named ? over(1) : Unit.ENDS;
            case IN -> inWhat();
            case INC, DEC, INVDEC -> {
                cursor.next();
                yield parts == 1 ? Unit.NO_COUNT : Unit.LEFT_OUT;
            }
            case UNKNOWN, MEASURE -> shortUnit() ? over(1) : cursor.is(Meaning.UNKNOWN) ? Unit.ENDS : Unit.NO_COUNT;
            case TIMES, ROUND, MORE, TOG -> Unit.NO_COUNT;
            default -> Unit.ENDS;
        };
    }

    /** A number behind the unit: of how many stitches each group is ("4 groups of 3 dc"), or of a space's chains. */
    private Unit numberAfter() {
        if (cursor.is(-1, Meaning.OF) && cursor.is(-2, Meaning.PETAL)) {
            each = cursor.peek().value();
            counted = true;
            return over(1);
        }
        boolean jammed = cursor.is(1, Meaning.DASH) && cursor.is(2, Meaning.CHAINSPACE);
        return cursor.is(1, Meaning.CHAINSPACE) || jammed ? over(jammed ? 2 : 1) : Unit.ENDS;
    }

    /** "(18 p.)", "(18 pts)": a unit of a few letters, in whatever language, before the bracket closes. */
    private boolean shortUnit() {
        Token unit = cursor.peek();
        boolean letters = unit.spaced() && unit.end() - unit.start() <= 3;
        return letters && (cursor.is(1, Meaning.SHUT) || cursor.is(1, Meaning.STOP) && cursor.is(2, Meaning.SHUT));
    }

    private Unit uncounted(int words) {
        counted = false;
        return over(words);
    }

    private Unit over(int words) {
        cursor.at += words;
        return Unit.MORE;
    }

    /** "per round", "each, …", "2 per quarter". */
    private Unit perWhat() {
        if (cursor.is(Meaning.PER) && cursor.is(1, Meaning.UNKNOWN)) {
            cursor.at += 2;
            return Unit.LEFT_OUT;
        }
        boolean round = cursor.is(1, Meaning.ROUND);
        boolean ends = cursor.is(1, Meaning.COMMA)
                || cursor.is(1, Meaning.SHUT)
                || cursor.is(1, Meaning.FINISH)
                || cursor.is(1, Meaning.STOP);
        return round || ends ? over(round ? 2 : 1) : Unit.NO_COUNT;
    }

    /** "in all", "in total", "in the round", "on each round". */
    private Unit inWhat() {
        if (cursor.is(1, Meaning.EACH) && cursor.is(2, Meaning.ROUND)) {
            return over(3);
        }
        if (cursor.is(1, Meaning.EACH) && !cursor.is(2, Meaning.ST)) {
            inTotal = true;
            return over(2);
        }
        if (!cursor.is(1, Meaning.TOTAL) && !cursor.is(1, Meaning.ROUND) && !cursor.is(1, Meaning.THE)) {
            return Unit.NO_COUNT;
        }
        cursor.next();
        cursor.skip(Meaning.THE, Meaning.ROUND);
        return Unit.MORE;
    }

    private void count(int number) {
        if (inTotal) {
            total = number;
            ofStitches = true;
            return;
        }
        all += number;
        if (counted) {
            ofStitches = true;
            stitches += number;
        }
    }
}
