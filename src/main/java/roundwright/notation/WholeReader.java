package roundwright.notation;

/** Reads what stitches are part of: "of the next 5 sts", "of the round", "of round 3", "of ring", "of the first fin". */
final class WholeReader {
    private final Reading line;
    private final Cursor cursor;

    WholeReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    /** Reads over it from "of"; true where more words of the place may follow. */
    boolean read(Place place) {
        cursor.next();
        cursor.skip(Meaning.THE);
        if (which()) {
            place.noun = false;
            return true;
        }
        if (cursor.accept(Meaning.ROUND)) {
            cursor.accept(Meaning.NUMBER);
            return true;
        }
        int begin = cursor.at;
        cursor.skip(
                Meaning.PREVIOUS,
                Meaning.FOUNDATION,
                Meaning.ROUND,
                Meaning.NOTE,
                Meaning.OTHER,
                Meaning.ORDINAL,
                Meaning.UNKNOWN,
                Meaning.FIRST,
                Meaning.LAST);
        overSecondName();
        cursor.skip(Meaning.CHAIN, Meaning.NOTE, Meaning.RING, Meaning.UNKNOWN);
        boolean part = cursor.at > begin && thing(-1);
        if (part && ++line.things > 1) {
            line.features.add(Feature.JOIN_PARTS);
        }
        if (cursor.is(-1, Meaning.NOTE)
                && (cursor.is(-2, Meaning.FIRST) || cursor.is(-2, Meaning.ORDINAL) || cursor.is(-2, Meaning.OTHER))) {
            line.features.add(Feature.JOIN_PARTS);
        }
        numberedPart();
        return true;
    }

    /** Whether words at the cursor say which stitches: "the next 5", "the first 3", not "the first fin". */
    private boolean which() {
        return switch (cursor.peek().meaning()) {
            case NEXT, EACH, NUMBER, REMAINING -> true;
            case FIRST, LAST -> !thing(1);
            default -> false;
        };
    }

    private boolean thing(int ahead) {
        boolean named = cursor.is(ahead, Meaning.NOTE) && cursor.peek(ahead).feature() == Feature.OTHER;
        return named || cursor.is(ahead, Meaning.UNKNOWN);
    }

    /** Over "/half" of "the first fin/half". */
    private void overSecondName() {
        boolean second = cursor.is(Meaning.SLASH) && !cursor.peek().spaced() && thing(-1) && thing(1);
        cursor.at += second ? 2 : 0;
    }

    /** "12 sts of leg one": the number is the leg's, not one more stitch. */
    private void numberedPart() {
        boolean part = cursor.is(-1, Meaning.NOTE) && cursor.peek(-1).feature() == Feature.OTHER;
        Meaning after = cursor.peek(1).meaning();
        if (part && cursor.is(Meaning.NUMBER) && !after.makes() && after != Meaning.ST && after != Meaning.CHAIN) {
            cursor.next();
            line.features.add(Feature.JOIN_PARTS);
        }
    }
}
