package roundwright.notation;

/** Looks ahead for words that say where a step goes. */
final class PlaceStarts {
    private static final int LONGEST_ASIDE = 9;
    private static final int ALL = "all".length();

    private final Cursor cursor;
    private final Yarns yarns;

    PlaceStarts(Cursor cursor, Yarns yarns) {
        this.cursor = cursor;
        this.yarns = yarns;
    }

    /** Whether words at the cursor begin to say where a step goes, and not only how often. */
    boolean startsPlace() {
        return switch (cursor.peek().meaning()) {
            case AROUND, ROUND -> aroundPost() && !thing(1);
            case ACROSS -> whichStitches();
            case TOEND -> false;
            case FROM -> cursor.peek(-1).meaning().makes() && fromChain();
            case SLASH -> perStitch();
            case IN -> !thing(1) && !yarns.in();
            default -> starts();
        };
    }

    /** "from the 2nd ch": along the chain, all of it from there or so many stitches. */
    boolean fromChain() {
        int ordinal = cursor.is(1, Meaning.THE) ? 2 : 1;
        return cursor.is(Meaning.FROM) && cursor.is(ordinal, Meaning.ORDINAL) && cursor.is(ordinal + 1, Meaning.CHAIN);
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
            case EACH -> !allOfIt();
            case IN, NEXT, SAME, REMAINING, AROUND, ACROSS, TOEND, BETWEEN, LAST, FIRST -> true;
            case TO -> toPlace(1) || ToCorner.ahead(cursor);
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

    /** "dc, inc all (18)": how often all that stands before is done, not where the last of it goes. */
    boolean allOfIt() {
        return allOfIt(cursor);
    }

    static boolean allOfIt(Cursor cursor) {
        Token all = cursor.peek();
        boolean alone = all.is(Meaning.EACH)
                && all.end() - all.start() == ALL
                && cursor.peek(-1).meaning().makes();
        return alone
                && switch (cursor.peek(1).meaning()) {
                    case FINISH, OPEN, EQUALS, STOP -> true;
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
                || cursor.is(which, Meaning.CHAIN)
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
        boolean led = place > 0;
        boolean the = cursor.is(place, Meaning.THE);
        place += the ? 1 : 0;
        int thing = place;
        while (partOfThing(cursor.peek(place).meaning())) {
            place++;
        }
        boolean named = cursor.is(thing, Meaning.UNKNOWN)
                || along && !cursor.is(thing, Meaning.SPACE) && !cursor.is(thing, Meaning.RING);
        boolean numbered = along && cursor.is(-1 + place, Meaning.UNKNOWN) && cursor.is(place, Meaning.NUMBER);
        place += numbered ? 1 : 0;
        if (!led || !the && !numbered || place == thing || !named) {
            return false;
        }
        boolean ends = cursor.peek(place).meaning().parts()
                || cursor.is(place, Meaning.OPEN)
                || cursor.is(place, Meaning.FINISH);
        cursor.at += ends ? place : 0;
        return ends;
    }

    /** Words of a thing that is no round: "the cord end", "the other row ends", "the starting chain", "the edge". */
    private static boolean partOfThing(Meaning meaning) {
        return switch (meaning) {
            case UNKNOWN, SPACE, NOTE, ENDING, FOUNDATION, TCHAIN, TOP, OTHER, ROUND -> true;
            default -> false;
        };
    }

    /** Reads over "on the second leg," before the steps; false where it is not so. */
    boolean overPartAhead() {
        int end = 1;
        while (cursor.is(end, Meaning.THE)
                || cursor.is(end, Meaning.ORDINAL)
                || cursor.is(end, Meaning.FIRST)
                || cursor.is(end, Meaning.OTHER)) {
            end++;
        }
        boolean ahead = end > 1 && thing(1) && cursor.is(end, Meaning.NOTE) && cursor.is(end + 1, Meaning.COMMA);
        cursor.at += ahead ? end + 2 : 0;
        return ahead;
    }

    /** Reads over words between a step and its place. */
    void overWords() {
        overAdverb();
        overAside();
    }

    /** Reads over "on each round", "per round" after so many stitches, which says how many there are and not where they go. */
    void overEachRound() {
        cursor.at += new CountEnds(cursor).overEach(0);
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
        boolean is = cursor.is(Meaning.UNKNOWN) && cursor.peek().value() == Lexicon.IS;
        cursor.at += is && cursor.is(1, Meaning.FILLER) && cursor.is(2, Meaning.IN) ? 1 : 0;
        boolean adverb = cursor.is(Meaning.FILLER) || cursor.is(Meaning.EVENLY);
        boolean around = cursor.is(1, Meaning.AROUND) && cursor.is(Meaning.FILLER);
        if (adverb && (cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.EACH) || around)) {
            cursor.next();
        }
    }
}
