package roundwright.notation;

/** Looks ahead for words that say where a step goes. */
final class PlaceStarts {
    private static final int LONGEST_ASIDE = 9;

    private final Cursor cursor;

    PlaceStarts(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Whether words at the cursor begin to say where a step goes, and not only how often. */
    boolean startsPlace() {
        return switch (cursor.peek().meaning()) {
            case AROUND -> aroundPost();
            case ACROSS -> whichStitches();
            case ROUND -> aroundPost();
            case TOEND -> false;
            case SLASH -> perStitch();
            case IN ->
                !thing(1)
                        && !cursor.is(1, Meaning.COLOUR)
                        && !(cursor.is(1, Meaning.THE) && cursor.is(2, Meaning.COLOUR));
            default -> starts();
        };
    }

    /** "2sc/st". */
    boolean perStitch() {
        boolean into = cursor.is(1, Meaning.ST) || cursor.is(1, Meaning.RING) || cursor.is(1, Meaning.MAGIC);
        return into && !cursor.peek().spaced() && !cursor.peek(1).spaced();
    }

    /** Whether a part of the piece is named so many tokens on: "leg 1", "the third leg", "the thumb gap". */
    boolean thing(int ahead) {
        int place = ahead;
        boolean the = false;
        while (true) {
            switch (cursor.peek(place).meaning()) {
                case THE, ORDINAL, OTHER, FIRST -> the = true;
                case NOTE -> {
                    return cursor.peek(place).feature() == Feature.OTHER;
                }
                case UNKNOWN -> {
                    return the && cursor.is(ahead - 1, Meaning.AROUND);
                }
                default -> {
                    return false;
                }
            }
            place++;
        }
    }

    /** Whether words at the cursor begin to say where. */
    boolean starts() {
        return switch (cursor.peek().meaning()) {
            case IN, EACH, NEXT, SAME, REMAINING, AROUND, ACROSS, TOEND, BETWEEN, LAST, FIRST -> true;
            case TO -> toPlace(1);
            case AT -> cursor.is(1, Meaning.BASE) || cursor.is(1, Meaning.SAME) || cursor.is(1, Meaning.THE);
            case BASE, OTHERSIDE -> true;
            case THE -> startsAfterThe();
            case HOLD -> true;
            case ORDINAL -> true;
            case ROUND -> !cursor.is(1, Meaning.NUMBER);
            case MAGIC, RING -> cursor.peek(-1).is(Meaning.STITCH);
            case PER -> cursor.is(1, Meaning.ST) || cursor.is(1, Meaning.STITCH);
            default -> false;
        };
    }

    private boolean startsAfterThe() {
        return switch (cursor.peek(1).meaning()) {
            case NEXT, SAME, REMAINING, LAST, FIRST, ORDINAL, EACH -> true;
            default -> false;
        };
    }

    boolean toPlace(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case LAST,
                    FIRST,
                    NEXT,
                    SAME,
                    ORDINAL,
                    TOP,
                    RING,
                    MAGIC,
                    ST,
                    SPACE,
                    CHAINSPACE,
                    TCHAIN,
                    MARKER,
                    STITCH,
                    NUMBER,
                    REMAINING,
                    CHAIN,
                    BASE,
                    START -> true;
            case THE -> toPlace(ahead + 1);
            default -> false;
        };
    }

    /** "fpdc around next st": round its post, not round the piece. */
    boolean aroundPost() {
        return switch (cursor.peek(1).meaning()) {
            case NEXT, THE, EACH, ST, STITCH, FIRST, LAST, SAME, SKIP -> true;
            default -> false;
        };
    }

    /** "along next 5 sts": not to the end. */
    boolean whichStitches() {
        int which = cursor.is(1, Meaning.THE) ? 2 : 1;
        return cursor.is(which, Meaning.NEXT)
                || cursor.is(which, Meaning.EACH)
                || cursor.is(which, Meaning.NUMBER)
                        && (cursor.is(which + 1, Meaning.ST) || cursor.is(which + 1, Meaning.STITCH));
    }

    /** Reads over "over the elastic", "evenly around the opening"; false, and the cursor unmoved, where no such thing stands there. */
    boolean overThing() {
        int place = cursor.is(Meaning.EVENLY) ? 1 : 0;
        boolean along = cursor.is(place, Meaning.IN)
                || cursor.is(place, Meaning.AROUND)
                || cursor.is(place, Meaning.ACROSS)
                || cursor.is(place, Meaning.ROUND);
        place += along ? 1 : 0;
        if (place == 0 || !cursor.is(place, Meaning.THE) || !cursor.is(place + 1, Meaning.UNKNOWN)) {
            return false;
        }
        place += 2;
        while (cursor.is(place, Meaning.UNKNOWN) || cursor.is(place, Meaning.SPACE) || cursor.is(place, Meaning.NOTE)) {
            place++;
        }
        boolean ends = cursor.peek(place).meaning().parts()
                || cursor.is(place, Meaning.OPEN)
                || cursor.is(place, Meaning.FINISH);
        cursor.at += ends ? place : 0;
        return ends;
    }

    /** Reads over words between a step and its place. */
    void overWords() {
        overAdverb();
        overAside();
    }

    /** "inc (see page 5) in each st", "6 sc (UK dc) in a ring": words in brackets between the step and its place. */
    private void overAside() {
        int shut = 1;
        while (cursor.is(Meaning.OPEN) && shut < LONGEST_ASIDE && !cursor.is(shut, Meaning.SHUT)) {
            boolean steps = cursor.is(shut, Meaning.NUMBER)
                    && cursor.peek(shut + 1).meaning().makes();
            if (steps
                    || cursor.is(shut, Meaning.COMMA)
                    || cursor.is(shut, Meaning.OPEN)
                    || cursor.is(shut, Meaning.IN)) {
                return;
            }
            shut++;
        }
        boolean aside =
                cursor.is(Meaning.OPEN) && cursor.is(shut, Meaning.SHUT) && shut > 1 && !cursor.is(1, Meaning.NUMBER);
        if (aside && (cursor.is(shut + 1, Meaning.IN) || cursor.is(shut + 1, Meaning.EACH))) {
            cursor.at += shut + 1;
        }
    }

    /** "ss loosely in each st", "sc evenly in each st". */
    private void overAdverb() {
        boolean adverb = cursor.is(Meaning.FILLER) || cursor.is(Meaning.EVENLY);
        if (adverb && (cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.EACH) || cursor.is(1, Meaning.AROUND))) {
            cursor.next();
        }
    }
}
