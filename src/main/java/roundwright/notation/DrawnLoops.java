package roundwright.notation;

import roundwright.notation.Node.Manner;

/** Reads a decrease that is told by its loops: "draw up a loop in each of next 2 sc, yo and draw through all 3 loops on hook". */
final class DrawnLoops {
    private final Cursor cursor;

    DrawnLoops(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Reads it at the cursor; false where it does not say over how many stitches, or that they are closed together. */
    boolean read(StepCore core, StitchName name) {
        cursor.next();
        cursor.skip(Meaning.IN, Meaning.EACH, Meaning.OF, Meaning.THE, Meaning.NEXT);
        int over = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 0;
        cursor.skip(Meaning.ST, Meaning.STITCH);
        boolean closed = over > 1 && overClosing();
        core.name = name;
        core.manner = Manner.DECREASE;
        core.takes = over;
        return closed;
    }

    /** Over ", yo and draw through all 3 loops on hook". */
    private boolean overClosing() {
        int loops = 0;
        while (!cursor.is(loops, Meaning.SPACE)) {
            switch (cursor.peek(loops).meaning()) {
                case COMMA, AND, UNKNOWN, NOTE, COLOUR, IN, EACH, NUMBER, THE, HOOK -> loops++;
                default -> {
                    return false;
                }
            }
        }
        cursor.at += loops + 1;
        cursor.skip(Meaning.IN, Meaning.THE, Meaning.HOOK);
        if (cursor.is(-1, Meaning.IN) || cursor.is(-1, Meaning.THE)) {
            cursor.skip(Meaning.UNKNOWN);
        }
        return true;
    }
}
