package roundwright.notation;

import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads a place that stands before its stitch, after it over a mark, or goes on from the stitch before. */
final class PlaceFirst {
    private final Reading line;
    private final Cursor cursor;
    private final Items items;

    PlaceFirst(Reading line, Items items) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
    }

    /** "… and in next 4 ch", "in next st work 3 dc", "next 2 sts together"; false, the cursor unmoved, where none of them. */
    boolean read() {
        int begin = cursor.at;
        Place place = line.places.read();
        if (place == null) {
            return false;
        }
        if (place.holdOnly()) {
            line.hold = place.hold;
            return true;
        }
        boolean understood = whereAll(begin, place) || together(begin, place) || stitch(begin, place);
        cursor.at = understood ? cursor.at : begin;
        return understood;
    }

    /** A ring or a chain that what stands before, or what follows, goes into. */
    private boolean whereAll(int begin, Place place) {
        if (place.target == Target.RING && place.each && !line.ring) {
            items.intoRing();
        }
        boolean behind = line.unplaced != null && (items.last() == line.unplaced || items.last() instanceof Note);
        if (place.target == Target.RING && behind && line.placeBehind(items, place)) {
            return true;
        }
        boolean starting = place.chain && cursor.peek(begin - cursor.at - 1).is(Meaning.START);
        boolean chain =
                starting || place.fromHook || place.otherSide || place.ordinal > 0 && place.chain && !line.worked;
        if (place.target != Target.RING && !chain) {
            return false;
        }
        line.ring |= place.target == Target.RING;
        line.from = place.fromHook && !line.begun ? place.ordinal : line.from;
        line.foundation |= place.fromHook || place.otherSide || place.chain;
        line.stitches |= line.ring;
        line.features.add(line.ring ? Feature.MAGIC_RING : place.otherSide ? Feature.OVAL : Feature.FOUNDATION_CHAIN);
        items.addApart(new Note(cursor.since(begin), Feature.OTHER));
        return true;
    }

    /** "the next two stitches together", "every 2nd and 3rd stitch together". */
    private boolean together(int begin, Place place) {
        boolean every = place.everyNth > 0;
        if (!every && place.number < 2 || !cursor.accept(Meaning.TOG)) {
            return false;
        }
        worked();
        int over = every ? 2 : place.number;
        Times times = place.each && !every ? Times.FULL : Times.ONCE;
        Work step = new Work(
                cursor.since(begin), Manner.DECREASE, line.lastName, over, 1, times, line.hold, Target.NEXT, "");
        items.add(every ? new Meant(line, step, 0, false, false, place).node() : step);
        return true;
    }

    private boolean stitch(int begin, Place place) {
        boolean goesOn = cursor.peek(begin - cursor.at - 1).is(Meaning.AND);
        boolean some = some(begin, place);
        if (!goesOn && !some) {
            cursor.skip(Meaning.COLON, Meaning.COMMA, Meaning.WORK);
        }
        boolean numbered =
                !goesOn && cursor.is(Meaning.NUMBER) && cursor.peek(1).meaning().makes();
        int number = numbered ? cursor.next().value() : 0;
        boolean named = !goesOn && cursor.is(Meaning.STITCH);
        StitchName name =
                named ? cursor.next().name() : goesOn && line.lastStep != null ? line.lastStep : line.lastName;
        boolean bare = !named && number == 0;
        if (bare && !goesOn && line.unplaced != null && items.last() == line.unplaced) {
            items.nodes.set(items.nodes.size() - 1, line.placeLater(place));
            return true;
        }
        if (bare && !some && (!line.worked || line.counted || name == StitchName.ANY)) {
            return false;
        }
        Work unit = new Work(cursor.since(begin), Manner.PLAIN, name, 1, 1, Times.ONCE, line.hold, Target.NEXT, "");
        int each = number > 0 ? number : goesOn ? line.lastEach : 0;
        items.addStep(new Meant(line, unit, each, false, false, place).node());
        worked();
        return true;
    }

    /** "work the first 10": so many stitches, told by the verb alone. */
    private boolean some(int begin, Place place) {
        int verb = cursor.peek(begin - cursor.at - 1).is(Meaning.THE) ? 2 : 1;
        boolean work = cursor.peek(begin - cursor.at - verb).is(Meaning.WORK);
        return work && place.number > 1 && !place.noun && !place.each && cursor.clauseEnds();
    }

    private void worked() {
        line.stitches = true;
        line.worked = true;
        line.beyondSlips = true;
    }
}
