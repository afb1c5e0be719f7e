package roundwright.notation;

import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads a magic ring, with the stitches that go into it where they stand beside it. */
final class MagicRingReader {
    private final Reading line;
    private final Cursor cursor;
    private final Items items;
    private final StrangeWords strangers;

    MagicRingReader(Reading line, Items items, StrangeWords strangers) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
        this.strangers = strangers;
    }

    /** "MR 6", "magic ring, 6 dc into it". */
    boolean read() {
        int begin = cursor.at;
        cursor.next();
        if (cursor.is(Meaning.INC) || cursor.is(Meaning.DEC)) {
            line.doubt(cursor.since(begin));
        }
        ringed();
        cursor.skip(Meaning.RING, Meaning.WITH, Meaning.AND, Meaning.TIMES, Meaning.OF, Meaning.COLON, Meaning.DASH);
        if (cursor.is(-1, Meaning.WITH) && cursor.is(Meaning.UNKNOWN)) {
            cursor.at--;
        }
        boolean named = cursor.is(2, Meaning.STITCH) || cursor.is(2, Meaning.ST);
        boolean bracket = !line.worked
                && cursor.is(Meaning.OPEN)
                && cursor.is(1, Meaning.NUMBER)
                && (cursor.is(2, Meaning.SHUT) || named && cursor.is(3, Meaning.SHUT));
        boolean numberAlone = !line.worked
                && cursor.is(Meaning.NUMBER)
                && !cursor.peek(1).meaning().makes()
                && !cursor.is(1, Meaning.TIMES);
        if (numberAlone || bracket) {
            strangers.before(begin);
            ringOf(begin, bracket);
            return true;
        }
        if (line.unplaced != null) {
            Place ring = new Place();
            ring.target = Target.RING;
            line.placeBehind(items, ring);
        }
        items.addApart(new Note(cursor.since(begin), Feature.MAGIC_RING));
        return true;
    }

    /** "MR 6", "MR (6)", "magic ring (6 dc)": so many stitches into it. */
    private void ringOf(int begin, boolean bracket) {
        cursor.accept(Meaning.OPEN);
        int number = cursor.next().value();
        if (bracket && cursor.is(Meaning.STITCH)) {
            line.lastName = cursor.next().name();
            line.names.add(line.lastName);
        }
        cursor.skip(Meaning.ST);
        if (bracket) {
            cursor.accept(Meaning.SHUT);
        }
        line.worked = true;
        line.begun = true;
        intoRing(begin, number);
    }

    private void ringed() {
        line.features.add(Feature.MAGIC_RING);
        line.ring = true;
        line.stitches = true;
    }

    private void intoRing(int begin, int number) {
        items.add(new Work(
                cursor.since(begin), Manner.PLAIN, line.lastName, 0, 1, Times.of(number), Hold.BOTH, Target.RING, ""));
    }

    /** "6 mr". */
    boolean numbered() {
        int begin = cursor.at;
        int number = cursor.next().value();
        cursor.next();
        ringed();
        intoRing(begin, number);
        return true;
    }
}
