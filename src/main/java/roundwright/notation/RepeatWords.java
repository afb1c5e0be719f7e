package roundwright.notation;

/** Reads how often what stands before is done: "x 6", "6 times", "twice", "rep from * 5 more times", "repeat around". */
final class RepeatWords {
    /** How often, and how the words said it. */
    record Often(Times times, boolean more, boolean total, boolean repeat, boolean fromStar) {}

    /** So often at most is a bracket repeated by a number that stands before it and apart. */
    private static final int MOST_APART = 12;

    private final Cursor cursor;

    RepeatWords(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Reads such words at the cursor, also in brackets of their own; null, and the cursor unmoved, where there are none. */
    Often read() {
        int begin = cursor.at;
        boolean bracket = cursor.accept(Meaning.OPEN);
        Often often = words();
        if (often == null || bracket && !cursor.accept(Meaning.SHUT)) {
            cursor.at = begin;
            return null;
        }
        return often;
    }

    /** "6 times: …", "repeat the following 6 times: …": how often all that follows is done; null where it is not said. */
    Often ofAll(NoteReader notes) {
        int begin = cursor.at;
        cursor.skip(Meaning.WORK, Meaning.THE, Meaning.NEXT, Meaning.FILLER, Meaning.IT, Meaning.STAR, Meaning.REPEAT);
        Often often = cursor.is(Meaning.EACH) ? null : read();
        boolean mark = cursor.is(Meaning.COLON)
                || cursor.is(Meaning.DASH) && cursor.peek().spaced();
        if (often == null || !mark || !notes.workAhead(1)) {
            cursor.at = begin;
            return null;
        }
        cursor.next();
        return often;
    }

    private Often words() {
        if (cursor.is(Meaning.EACH) && cursor.is(1, Meaning.AROUND)) {
            cursor.next();
        }
        Meaning first = cursor.peek().meaning();
        if (first == Meaning.REPEAT || first == Meaning.CONTINUE && cursor.is(1, Meaning.REPEAT)) {
            return repeat();
        }
        if (first == Meaning.AROUND
                || first == Meaning.TOEND
                || first == Meaning.ACROSS
                || roundEnds()
                || PlaceStarts.allOfIt(cursor)) {
            cursor.next();
            overRound();
            return new Often(filled(), false, false, false, false);
        }
        boolean preposition = first == Meaning.FOR || first == Meaning.OF || first == Meaning.PER;
        if (preposition && (cursor.is(2, Meaning.TIMES) || cursor.is(1, Meaning.COUNTER))) {
            cursor.next();
            return often(false, false);
        }
        if (first == Meaning.FOR && wholeRound()) {
            return new Often(Times.FULL, false, false, false, false);
        }
        if (first == Meaning.TO && toRest()) {
            return new Often(toLast(), false, false, false, false);
        }
        return often(false, false);
    }

    /** "to last 3 sts", "until 3 sts remain". */
    private boolean toRest() {
        int place = cursor.is(1, Meaning.THE) ? 2 : 1;
        return cursor.is(place, Meaning.LAST)
                || cursor.is(place, Meaning.NUMBER)
                        && cursor.is(place + 1, Meaning.ST)
                        && cursor.is(place + 2, Meaning.REMAINING);
    }

    private Times filled() {
        if (cursor.is(Meaning.TO) && cursor.is(1, Meaning.LAST)
                || cursor.is(Meaning.TO) && cursor.is(1, Meaning.THE) && cursor.is(2, Meaning.LAST)) {
            return toLast();
        }
        return Times.FULL;
    }

    private Times toLast() {
        cursor.next();
        cursor.skip(Meaning.THE);
        cursor.accept(Meaning.LAST);
        int stitches = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 1;
        cursor.skip(Meaning.ST, Meaning.STITCH, Meaning.REMAINING);
        return Times.toLast(stitches);
    }

    /** "…, 5 x dc": the number belongs to the step after it. */
    private boolean timesOfNext() {
        Token times = cursor.peek(1);
        boolean sign = times.is(Meaning.TIMES) && times.end() - times.start() == 1 || times.is(Meaning.MORE);
        return sign && cursor.peek(2).meaning().makes();
    }

    /** "*6" after a bracket, but not the asterisk that opens "*2 dc, …". */
    private boolean starTimes() {
        if (!cursor.is(Meaning.STAR) || !cursor.is(1, Meaning.NUMBER)) {
            return false;
        }
        int place = cursor.is(2, Meaning.TIMES) ? 3 : 2;
        Meaning after = cursor.peek(place).meaning();
        boolean jammedStep =
                after == Meaning.DASH && cursor.peek(place + 1).meaning().makes();
        return switch (after) {
            case SHUT,
                    FINISH,
                    OPEN,
                    TIMES,
                    AROUND,
                    EQUALS,
                    STAR,
                    STARS,
                    NUMBER,
                    AND,
                    JOIN,
                    CLOSE,
                    YOUHAVE,
                    TOTAL,
                    TURN,
                    NOTE,
                    NOT -> true;
            case TO -> place > 2;
            default -> after.parts() && !jammedStep;
        };
    }

    private Often repeat() {
        cursor.skip(Meaning.CONTINUE, Meaning.REPEAT);
        boolean star = overStars();
        overWhat();
        if (cursor.is(Meaning.ROUND) && cursor.is(1, Meaning.NUMBER)) {
            return null;
        }
        Times filled = filledAfterRepeat();
        if (filled != null) {
            return new Often(filled, false, false, true, star);
        }
        Often often = often(true, star);
        if (often == null) {
            return new Often(Times.FULL, false, false, true, star);
        }
        return often;
    }

    /** Over "from * to *", "from first *", "between * and *", "*". */
    private boolean overStars() {
        boolean star = false;
        while (true) {
            switch (cursor.peek().meaning()) {
                case STAR, STARS -> {
                    if (cursor.is(1, Meaning.NUMBER) && new CountEnds(cursor).closes()) {
                        return star;
                    }
                    star = true;
                }
                case FROM ->
                    star |= cursor.is(1, Meaning.STAR)
                            || cursor.is(1, Meaning.STARS)
                            || cursor.is(1, Meaning.START)
                            || cursor.is(1, Meaning.FIRST);
                case TO -> {
                    if (!cursor.is(1, Meaning.STAR) && !cursor.is(1, Meaning.STARS)) {
                        return star;
                    }
                }
                case BETWEEN, THE, FIRST -> {}
                case START -> star = true;
                case AND, DASH -> {
                    if (!cursor.is(1, Meaning.STAR) && !cursor.is(1, Meaning.STARS)) {
                        return star;
                    }
                }
                default -> {
                    return star;
                }
            }
            cursor.next();
        }
    }

    /** "these 2 stitches", "( )", "the sequence in brackets". */
    private void overWhat() {
        cursor.skip(Meaning.THE, Meaning.IT);
        if (cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.ST)) {
            cursor.next();
            cursor.next();
        }
        if (cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.SHUT)) {
            cursor.next();
            cursor.next();
        }
    }

    private Times filledAfterRepeat() {
        cursor.skip(Meaning.COMMA);
        if (wholeRound()) {
            return Times.FULL;
        }
        boolean round = roundEnds();
        if (round || cursor.is(Meaning.AROUND) || cursor.is(Meaning.TOEND) || cursor.is(Meaning.ACROSS)) {
            cursor.next();
            overRound();
            return filled();
        }
        if (cursor.is(Meaning.TO)
                && (cursor.is(1, Meaning.LAST) || cursor.is(1, Meaning.THE) && cursor.is(2, Meaning.LAST))) {
            return toLast();
        }
        if (cursor.is(Meaning.EACH)
                || cursor.is(Meaning.IN) && cursor.is(1, Meaning.EACH)
                || cursor.is(Meaning.REMAINING)) {
            cursor.skip(
                    Meaning.IN, Meaning.EACH, Meaning.REMAINING, Meaning.ST, Meaning.OF, Meaning.THE, Meaning.ROUND);
            cursor.accept(Meaning.AROUND);
            return Times.FULL;
        }
        return null;
    }

    /** "to end … of the rnd". */
    private void overRound() {
        int round = cursor.is(1, Meaning.THE) ? 2 : 1;
        if (cursor.is(Meaning.OF) && cursor.is(round, Meaning.ROUND)) {
            cursor.at += round + 1;
        }
    }

    /** Whether "round" at the cursor is all that is round, and no other round is named: a number after it may be the count. */
    private boolean roundEnds() {
        return cursor.is(Meaning.ROUND) && (!cursor.is(1, Meaning.NUMBER) || unit(2));
    }

    private boolean unit(int ahead) {
        return cursor.is(ahead, Meaning.ST) || cursor.is(ahead, Meaning.TOTAL) || cursor.is(ahead, Meaning.YOUHAVE);
    }

    /** "for the whole round", "for the rest of the round". */
    private boolean wholeRound() {
        int begin = cursor.at;
        boolean told = cursor.accept(Meaning.FOR);
        cursor.skip(Meaning.THE, Meaning.REMAINING, Meaning.OF);
        boolean round = cursor.accept(Meaning.AROUND) || roundEnds();
        cursor.accept(Meaning.ROUND);
        if (!told || !round) {
            cursor.at = begin;
        }
        return told && round;
    }

    /** "(…)6", "(…) 6" at the line's end: whether a number belongs to the bracket before it, or may do so. */
    static boolean behindBracket(Cursor cursor) {
        boolean few = cursor.peek().value() <= MOST_APART;
        boolean near = !cursor.peek().spaced() || few && new CountEnds(cursor).nothingAfter(1);
        return cursor.is(Meaning.NUMBER) && cursor.is(-1, Meaning.SHUT) && near;
    }

    private boolean jammed() {
        return behindBracket(cursor)
                && !cursor.peek(1).meaning().makes()
                && !cursor.is(1, Meaning.ST)
                && !cursor.is(1, Meaning.IN);
    }

    private Often often(boolean repeat, boolean star) {
        int begin = cursor.at;
        boolean more = false;
        boolean total = false;
        cursor.skip(Meaning.THE);
        boolean timed = cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.TIMES);
        if (timed && cursor.is(Meaning.EACH)) {
            cursor.next();
        } else if ((timed || cursor.is(1, Meaning.COUNTER)) && cursor.is(Meaning.MORE)) {
            cursor.next();
            more = true;
        }
        int number;
        if (cursor.is(Meaning.COUNTER)) {
            number = cursor.next().value();
        } else if (cursor.is(Meaning.TIMES) && cursor.is(1, Meaning.NUMBER) || starTimes()) {
            cursor.next();
            number = cursor.next().value();
            cursor.accept(Meaning.TIMES);
        } else if (cursor.is(Meaning.NUMBER)
                && !timesOfNext()
                && (cursor.is(1, Meaning.TIMES) || cursor.is(1, Meaning.MORE) || cursor.is(1, Meaning.REPEAT))) {
            number = cursor.next().value();
            more |= cursor.is(Meaning.MORE);
            cursor.next();
            cursor.accept(Meaning.TIMES);
        } else if (repeat && cursor.is(Meaning.NUMBER) && !unit(1) || jammed()) {
            number = cursor.next().value();
        } else {
            cursor.at = begin;
            return null;
        }
        more |= cursor.accept(Meaning.MORE);
        total = cursor.accept(Meaning.TOTAL);
        cursor.skip(Meaning.AROUND);
        return new Often(Times.of(number), more, total, repeat, star);
    }

    /** Whether the asterisk that opened this list is closed by another: else "repeat" closes it. */
    boolean closingStarAhead() {
        for (int ahead = 1; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            if (cursor.is(ahead, Meaning.STAR) || cursor.is(ahead, Meaning.STARS)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an asterisk stands within the next few words. */
    boolean starAhead() {
        for (int ahead = 1; ahead < 5; ahead++) {
            if (cursor.is(ahead, Meaning.STAR) || cursor.is(ahead, Meaning.STARS)) {
                return true;
            }
        }
        return false;
    }

    /** "6(dc, inc)": how often stands straight before a bracket of several steps; a large number apart from it may be a count. */
    boolean straight() {
        boolean before = cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.OPEN);
        int number = cursor.peek().value();
        if (!before || number < 2 || cursor.peek(1).spaced() && number > MOST_APART) {
            return false;
        }
        int steps = 0;
        for (int ahead = 2; !cursor.is(ahead, Meaning.SHUT) && !cursor.is(ahead, Meaning.FINISH); ahead++) {
            steps += cursor.peek(ahead).meaning().makes() ? 1 : 0;
        }
        return steps > 1;
    }
}
