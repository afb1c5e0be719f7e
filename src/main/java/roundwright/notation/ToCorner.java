package roundwright.notation;

/** Reads "to next corner", "to corner sp": how far stitches go along the side of a square. */
final class ToCorner {
    private static final String CORNER = "corner";

    private final String text;
    private final Cursor cursor;

    ToCorner(String text, Cursor cursor) {
        this.text = text;
        this.cursor = cursor;
    }

    /** Reads over it after a place that says "in each"; false, and the cursor unmoved, where it does not stand there. */
    boolean read(Place place) {
        int noun = noun(cursor);
        boolean stitches = place.each || place.around || place.remaining || cursor.is(-1, Meaning.STITCH);
        if (noun == 0
                || !stitches
                || !text.regionMatches(true, cursor.peek(noun).start(), CORNER, 0, CORNER.length())) {
            return false;
        }
        cursor.at += noun + 1;
        overSpace(cursor.peek(-1));
        place.toCorner = true;
        place.noun = true;
        return true;
    }

    /** Over the space that a corner is, where the corner has been named already: "corner ch-2 sp". */
    void overSpace(Token corner) {
        if (!text.regionMatches(true, corner.start(), CORNER, 0, CORNER.length())) {
            return;
        }
        int space = cursor.is(1, Meaning.DASH) ? 3 : 2;
        boolean chains =
                cursor.is(Meaning.CHAIN) && cursor.is(space - 1, Meaning.NUMBER) && cursor.is(space, Meaning.SPACE);
        cursor.at += chains ? space + 1 : cursor.is(Meaning.CHAINSPACE) ? 1 : 0;
    }

    /** Whether it may stand at the cursor. */
    static boolean ahead(Cursor cursor) {
        return noun(cursor) > 0;
    }

    /** How many tokens on its noun is; 0 where there is none. */
    private static int noun(Cursor cursor) {
        int ahead = 1;
        while (cursor.is(ahead, Meaning.THE) || cursor.is(ahead, Meaning.NEXT) || cursor.is(ahead, Meaning.EACH)) {
            ahead++;
        }
        boolean corner = cursor.is(ahead, Meaning.SPACE) || cursor.is(ahead, Meaning.CORNERST);
        return cursor.is(Meaning.TO) && corner ? ahead : 0;
    }
}
