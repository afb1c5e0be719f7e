package roundwright.notation;

import roundwright.notation.WrittenLine.Count;

/** Finds the count that a line states: "(18)", "= 18 sts", "– 18", "you should have 18 stitches", "30 dc, 10 ch-1 sps". */
final class CountReader {
    private final Reading line;
    private final Cursor cursor;

    private int stitches;
    private int all;
    private int parts;
    private boolean named;
    private boolean ofSts;
    private boolean ofGroups;
    private int total;
    private boolean counted;
    private boolean inTotal;
    private boolean ofStitches;

    CountReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
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
            case STAR, STARS -> starred();
            case ST -> titled();
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
        if (total > 0) {
            line.counts.add(new Count(total, span, true));
        }
        if (stitches > 0 && stitches != total || ofStitches && total == 0) {
            line.counts.add(new Count(stitches, span, true, ofGroups && parts == 1));
        }
        if (all != stitches && all > 0 && all != total) {
            line.counts.add(new Count(all, span, true, !ofStitches));
        }
    }

    private boolean bracketed() {
        int begin = cursor.at;
        if (leads()) {
            stitches = cursor.peek(1).value();
            ofStitches = true;
            cursor.at += 3;
            return true;
        }
        cursor.next();
        cursor.skip(Meaning.OPEN, Meaning.MARK);
        overTitle();
        overChange();
        overEquation();
        if (!numbers() || !shut()) {
            return false;
        }
        cursor.skip(Meaning.SHUT);
        if ((cursor.is(Meaning.COLON) || named && cursor.is(Meaning.DASH)) && !line.worked) {
            return true;
        }
        if (ofSts && line.worked && !cursor.is(Meaning.TIMES) && !cursor.is(1, Meaning.TIMES)) {
            return true;
        }
        return endsHere()
                && (line.stitches || cursor.peek(begin - cursor.at + 1).is(Meaning.EQUALS));
    }

    /** "sts: 18". */
    private boolean titled() {
        boolean found = line.worked && overTitle() && numbers() && (parts == 1 && nothingAfter(0));
        return found;
    }

    /** Over "sts:", "# sts =" before the count. */
    private boolean overTitle() {
        boolean title = cursor.is(Meaning.ST) && (cursor.is(1, Meaning.COLON) || cursor.is(1, Meaning.EQUALS));
        cursor.at += title ? 2 : 0;
        return title;
    }

    /** "*18*", "**(18 sts)**": a count in bold or italics. */
    private boolean starred() {
        if (!line.worked || depthOfStars() == 0) {
            return false;
        }
        cursor.skip(Meaning.STAR, Meaning.STARS);
        boolean found = cursor.is(Meaning.OPEN) ? bracketed() : numbers();
        boolean shut = cursor.is(Meaning.STAR) || cursor.is(Meaning.STARS);
        cursor.skip(Meaning.STAR, Meaning.STARS);
        return found && shut && endsHere() && !cursor.is(Meaning.NUMBER);
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

    /** "10 x 2 =" before the count. */
    private void overEquation() {
        if (!cursor.is(Meaning.NUMBER)) {
            return;
        }
        for (int ahead = 1; ahead < 7 && !cursor.is(ahead, Meaning.SHUT); ahead++) {
            if (cursor.is(ahead, Meaning.EQUALS) && cursor.is(ahead + 1, Meaning.NUMBER)) {
                cursor.at += ahead + 1;
                return;
            }
        }
    }

    /** "Rnd 3: [18] (sc, inc) around": the count first, in brackets. */
    private boolean leads() {
        boolean alone = cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.SHUT) && line.labelled && !line.worked;
        boolean steps = cursor.peek(3).meaning().makes() || cursor.is(3, Meaning.OPEN) || cursor.is(3, Meaning.STAR);
        if (alone && steps) {
            total = 0;
            all = 0;
            ofGroups = false;
        }
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
                && (cursor.is(2, Meaning.COMMA) || cursor.is(2, Meaning.SEMICOLON) || cursor.is(2, Meaning.SLASH))) {
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
        if (mistyped || cursor.accept(Meaning.SHUT) || cursor.done()) {
            return true;
        }
        boolean remark = named && cursor.peek().meaning().parts();
        while (remark && !cursor.done() && !cursor.is(Meaning.SHUT)) {
            if (cursor.next().meaning().makes() && !ofSts) {
                return false;
            }
        }
        return remark && (cursor.accept(Meaning.SHUT) || cursor.done());
    }

    private boolean marked() {
        cursor.skip(Meaning.EQUALS, Meaning.OPEN);
        boolean found = numbers();
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
                Meaning.DASH);
        boolean found = line.stitches && numbers();
        cursor.accept(Meaning.SHUT);
        return found;
    }

    /** "18 sts", "18" at the very end. */
    private boolean bare() {
        if (!line.stitches || cursor.at == 0) {
            return false;
        }
        Meaning after = cursor.peek(1).meaning();
        if (cursor.is(-1, Meaning.SHUT) && !cursor.peek().spaced()) {
            return false;
        }
        if (line.worked && cursor.is(-1, Meaning.STOP) && listOfCounts()) {
            return true;
        }
        boolean alone = nothingAfter(1) && (line.worked || !line.ring);
        boolean named = after == Meaning.ST && !placeAfter(2) && !cursor.is(2, Meaning.STITCH);
        if (!alone
                && !named
                && after != Meaning.TOTAL
                && !(after == Meaning.YOUHAVE && !cursor.is(2, Meaning.NUMBER))) {
            return false;
        }
        return numbers();
    }

    /** ". 16 dc, 16 ch-1 spaces" as the last words. */
    private boolean listOfCounts() {
        int begin = cursor.at;
        boolean found = numbers() && parts > 1 && nothingAfter(0);
        cursor.at = found ? cursor.at : begin;
        return found;
    }

    private boolean placeAfter(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case IN, EACH, TOG, BETWEEN, TIMES -> true;
            default -> false;
        };
    }

    /** Whether, after some marks, nothing more is worked: the line ends, or joins, or tells of other things. */
    private boolean nothingAfter(int ahead) {
        int place = ahead;
        while (cursor.peek(place).meaning().parts() || cursor.is(place, Meaning.SHUT)) {
            place++;
        }
        boolean over = place > ahead || cursor.is(place, Meaning.FINISH);
        for (; over && !cursor.is(place, Meaning.FINISH); place++) {
            over = switch (cursor.peek(place).meaning()) {
                case INC, DEC, INVDEC, TOG, SKIP, SPECIAL, TIMES, REPEAT, STAR, STARS, EACH, AROUND, TOEND, EVEN ->
                    false;
                case YOUHAVE, TOTAL, EQUALS -> false;
                case STITCH -> joinedTo(place - 1);
                case NUMBER ->
                    cursor.is(place - 1, Meaning.CHAIN)
                            || !counts(cursor.peek(place + 1).meaning());
                default -> true;
            };
        }
        return over;
    }

    /** Whether the cursor stands before a count with which the line ends, and nothing but marks before and after it. */
    boolean closes() {
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
        return found && (place > 0 || units > 1) && cursor.is(place + units, Meaning.FINISH);
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

    private boolean joinedTo(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case FIRST, START, ORDINAL, OF, TOP, THE, LAST, IN, TO -> true;
            default -> false;
        };
    }

    /** "Rnd 3: 18 - (sc, inc) x 6": the count before the steps. */
    boolean first() {
        boolean ahead = cursor.is(Meaning.NUMBER)
                && cursor.is(1, Meaning.DASH)
                && cursor.peek(1).spaced()
                && !cursor.is(2, Meaning.NUMBER)
                && cursor.peek(2).spaced();
        if (ahead) {
            Token number = cursor.next();
            line.counts.add(new Count(number.value(), number.span(), true));
            cursor.next();
        }
        return ahead;
    }

    /** "…, 18 sc" as the last words: perhaps the count. Adds it as one that is not sure; the cursor stays. */
    boolean perhaps() {
        int begin = cursor.at;
        boolean named = (line.worked || line.taken) && cursor.is(Meaning.NUMBER) && unitAhead();
        if (!named) {
            return false;
        }
        int number = cursor.next().value();
        cursor.next();
        cursor.skip(Meaning.ST);
        boolean ends = nothingAfter(0);
        if (ends) {
            line.counts.add(new Count(number, cursor.since(begin), line.taken));
        }
        cursor.at = begin;
        return ends;
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
        boolean found = numbers();
        cursor.accept(Meaning.SHUT);
        return found && (parts > 0) && nothingAfter(0);
    }

    /** "18", "= 18 sc", "21 tr + 3 ch", "18 stitches in total". */
    private boolean numbers() {
        stitches = 0;
        all = 0;
        parts = 0;
        ofStitches = false;
        named = false;
        ofSts = false;
        ofGroups = false;
        total = 0;
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
        return true;
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
        cursor.accept(Meaning.DASH);
        Unit unit = Unit.MORE;
        while (unit == Unit.MORE) {
            unit = unitWord();
        }
        if (unit == Unit.ENDS) {
            count(number);
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
            case CHAIN -> {
                counted = false;
                yield over(cursor.is(1, Meaning.DASH) && cursor.is(2, Meaning.NUMBER) ? 3 : 1);
            }
            case NUMBER -> {
                boolean jammed = cursor.is(1, Meaning.DASH) && cursor.is(2, Meaning.CHAINSPACE);
                yield cursor.is(1, Meaning.CHAINSPACE) || jammed ? over(jammed ? 2 : 1) : Unit.ENDS;
            }
            case CHAINSPACE, SPACE, PETAL -> {
                counted = false;
                yield over(1);
            }
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
            case TIMES, ROUND, MORE, TOG, MEASURE -> Unit.NO_COUNT;
            default -> Unit.ENDS;
        };
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

    /** Whether a bracket that closes here is not repeated or placed by what follows. */
    private boolean endsHere() {
        Meaning after = cursor.peek().meaning();
        boolean goesOn = switch (after) {
            case TIMES, COUNTER, IN, AROUND, TOEND, EACH, REPEAT -> true;
            case NUMBER -> cursor.is(1, Meaning.TIMES);
            case STAR -> cursor.is(1, Meaning.NUMBER);
            default -> false;
        };
        return !goesOn && !(after == Meaning.COMMA && !nothingAfter(0));
    }
}
