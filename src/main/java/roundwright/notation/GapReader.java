package roundwright.notation;

import java.util.Optional;

/** Reads how the stitches between increases or decreases change: "… with two stitches between the increases". */
final class GapReader {
    /** The words before such a number are no more than these. */
    private static final int FURTHEST = 12;

    private final Cursor cursor;

    GapReader(Cursor cursor) {
        this.cursor = cursor;
    }

    /**
     * Reads over such words; empty, and the cursor unmoved, where there are none.
     *
     * @param taken whether the line has named the round that it takes over
     */
    Optional<GapChange> read(boolean taken) {
        int begin = cursor.at;
        for (int skipped = 0; skipped < FURTHEST && !cursor.done(); skipped++) {
            Optional<GapChange> change = here(true);
            if (change.isPresent()) {
                overRest();
                return change;
            }
            if (!mayStandBefore(cursor.next(), taken)) {
                break;
            }
        }
        cursor.at = begin;
        return Optional.empty();
    }

    /** "…, with 2 dc between", straight after the shaping; empty, and the cursor unmoved, where that does not stand there. */
    Optional<GapChange> behind() {
        int begin = cursor.at;
        cursor.skip(Meaning.COMMA, Meaning.WITH, Meaning.WORK, Meaning.EVENLY);
        Optional<GapChange> change = here(false);
        cursor.at = change.isPresent() ? cursor.at : begin;
        return change;
    }

    /** "two plain stitches between the increases", "one more st between each inc". */
    private Optional<GapChange> here(boolean needsShaping) {
        int begin = cursor.at;
        cursor.accept(Meaning.THE);
        boolean more = cursor.accept(Meaning.MORE);
        int number = cursor.is(Meaning.NUMBER) ? cursor.next().value() : -1;
        more |= cursor.accept(Meaning.MORE);
        number = number < 0 && more ? 1 : number;
        boolean named = false;
        while (cursor.is(Meaning.ST)
                || cursor.is(Meaning.STITCH)
                || cursor.is(Meaning.PLAIN)
                || cursor.is(Meaning.FILLER)
                || cursor.is(Meaning.OF)
                || cursor.is(Meaning.WORK)) {
            named |= !cursor.next().is(Meaning.OF);
        }
        boolean between = number >= 0 && cursor.accept(Meaning.BETWEEN);
        cursor.skip(Meaning.THE, Meaning.EACH, Meaning.OF, Meaning.NUMBER);
        boolean shaping = cursor.accept(Meaning.INC) || cursor.accept(Meaning.DEC) || cursor.accept(Meaning.INVDEC);
        if (!between || !named || !shaping && (needsShaping || !ends())) {
            cursor.at = begin;
            return Optional.empty();
        }
        return Optional.of(new GapChange(number, more));
    }

    private boolean ends() {
        cursor.accept(Meaning.IT);
        return cursor.clauseEnds();
    }

    /** Over "instead of one", "each round", "this time" after it. */
    private void overRest() {
        cursor.at += new CountEnds(cursor).overEachRound(0);
        while (cursor.is(Meaning.NOT)
                || cursor.is(Meaning.THE)
                || cursor.is(Meaning.TIMES)
                || cursor.is(Meaning.AROUND)
                || cursor.is(Meaning.NUMBER) && cursor.is(-1, Meaning.NOT)) {
            cursor.next();
        }
        cursor.skip(Meaning.COMMA);
    }

    private static boolean mayStandBefore(Token token, boolean taken) {
        return switch (token.meaning()) {
            case COMMA,
                    DASH,
                    AND,
                    WITH,
                    ONLY,
                    WORK,
                    FILLER,
                    NOW,
                    CONTINUE,
                    START,
                    THE,
                    IN,
                    AS,
                    UNKNOWN,
                    EVEN,
                    TIMES,
                    NOTE,
                    STOP,
                    SEMICOLON,
                    COLON -> true;
            case INC, DEC, INVDEC, AROUND, REPEAT, ROUND, LAST, PREVIOUS, SAME, EACH -> !taken;
            default -> false;
        };
    }
}
