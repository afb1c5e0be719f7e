package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads one step and how often it is done: "5 dc", "2 sc in next st", "dc2tog x 6", "inc in each st around". */
final class StitchReader {
    private static final int LONGEST_ASIDE = 9;

    private final Reading line;
    private final Cursor cursor;

    StitchReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    /** The step at the cursor; null (and the cursor unmoved) where none begins there. */
    Node read() {
        int begin = cursor.at;
        int number = numberBefore();
        Core core = core(begin, number);
        if (core == null) {
            cursor.at = begin;
            return null;
        }
        if (core.swallowedNumber) {
            number = 0;
        }
        return finish(begin, number, core);
    }

    /** What is done, before how often and where. */
    private static final class Core {
        Manner manner = Manner.PLAIN;
        StitchName name = StitchName.ANY;
        int takes = 1;
        int makes = 1;
        Hold hold = Hold.BOTH;
        Place place;
        /** What the writer calls a stitch that has no name of its own in the trade's table. */
        String own = "";

        boolean swallowedNumber;
        int skipped;
        boolean first;
        /** Goes on until the round is full ("dec every 2 sts"). */
        boolean fills;
        /** All that is left of the round. */
        boolean rest;

        boolean space;
        /** A spaced shaping word after the stitch: one name, or two steps. */
        boolean twoSteps;
        /** A stitch named right after the shaping word: one name, or two steps. */
        boolean stitchAfter;
    }

    private boolean timesNumber;

    /** "5", "a", "6 x"; 0 where none. */
    private int numberBefore() {
        timesNumber = false;
        if (cursor.is(Meaning.COUNTER) && (cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.EACH))) {
            return cursor.next().value();
        }
        if (!cursor.is(Meaning.NUMBER)) {
            return 0;
        }
        int number = cursor.next().value();
        overAdjective();
        if (cursor.is(Meaning.TIMES) && isCore(1)) {
            cursor.next();
            timesNumber = true;
        } else if (cursor.is(Meaning.DASH) && !cursor.peek().spaced() && isCore(1)
                || cursor.is(Meaning.MORE) && isCore(1)) {
            cursor.next();
        }
        return number;
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

    /** "6 normal sc", "6 sts sc". */
    private void overAdjective() {
        int ahead = 0;
        while (cursor.is(ahead, Meaning.FILLER) || cursor.is(ahead, Meaning.ST)) {
            ahead++;
        }
        if (ahead > 0 && cursor.is(ahead, Meaning.STITCH)) {
            cursor.at += ahead;
        }
    }

    private boolean isCore(int ahead) {
        return cursor.peek(ahead).meaning().makes() || cursor.is(ahead, Meaning.TOG) || cursor.is(ahead, Meaning.HOLD);
    }

    private Core core(int begin, int number) {
        Core core = new Core();
        if (cursor.is(Meaning.HOLD) && isCore(1)) {
            core.hold = cursor.next().hold();
        }
        Token token = cursor.peek();
        switch (token.meaning()) {
            case STITCH -> stitch(core, number);
            case SPECIAL -> special(core);
            case CHAIN -> simple(core, Manner.CHAIN, 0, 1);
            case SLIP -> simple(core, Manner.PLAIN, 1, 1);
            case SKIP -> {
                if (leaves(token) && !unworkedAhead()) {
                    return null;
                }
                skip(core);
            }
            case INC -> increase(core);
            case DEC, INVDEC -> decrease(core);
            case TOG -> {
                if (token.name() == null && number < 2) {
                    return null;
                }
                together(core, number);
            }
            default -> {
                return any(core, number) ? core : null;
            }
        }
        return core;
    }

    private void simple(Core core, Manner manner, int takes, int makes) {
        Token token = cursor.next();
        core.manner = manner;
        core.takes = takes;
        core.makes = makes;
        core.name = token.name();
    }

    /** "3 in next st": the number stands for the stitch too; "1 st in each". */
    private boolean any(Core core, int number) {
        if (number == 0) {
            return false;
        }
        core.name = line.lastName;
        if (number > 1 && cursor.is(Meaning.ST) && cursor.is(1, Meaning.TOG)) {
            cursor.next();
            together(core, number);
            return true;
        }
        if (cursor.is(Meaning.ST)) {
            int before = cursor.at;
            cursor.next();
            boolean place = line.places.starts();
            boolean listed = cursor.is(Meaning.COMMA) && cursor.peek(-3).is(Meaning.OPEN);
            cursor.at = place || listed ? cursor.at : before;
            return place || listed;
        }
        return cursor.is(Meaning.IN) || cursor.is(Meaning.EACH) || alone();
    }

    /** "(2, inc) x 6", "mr, 6", "5) 12": a number that stands for so many stitches. */
    private boolean alone() {
        if (cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.SHUT)) {
            return !line.worked && line.labelled;
        }
        boolean last = cursor.done()
                || cursor.peek().meaning().parts() && cursor.peek(1).is(Meaning.FINISH);
        if (last || cursor.is(Meaning.EQUALS)) {
            return !line.worked && (line.ring || line.labelled) || line.worked && cursor.is(Meaning.EQUALS);
        }
        if (numbersToStep()) {
            return true;
        }
        boolean marked = cursor.is(Meaning.COMMA) || cursor.is(Meaning.SHUT);
        return marked
                && (line.worked
                        || cursor.peek(-2).is(Meaning.OPEN)
                        || cursor.peek(-2).is(Meaning.STAR)
                        || cursor.peek(1).meaning().makes());
    }

    /** "1, 1, 2 in one": numbers alone up to one that is a step. */
    private boolean numbersToStep() {
        int ahead = 0;
        while (cursor.is(ahead, Meaning.COMMA) && cursor.is(ahead + 1, Meaning.NUMBER)) {
            ahead += 2;
        }
        boolean step = cursor.is(ahead, Meaning.IN)
                || cursor.is(ahead, Meaning.TOG)
                || cursor.peek(ahead).meaning().makes();
        return ahead > 0 && step;
    }

    private void stitch(Core core, int number) {
        Token token = cursor.next();
        core.name = token.name();
        core.hold = token.hold() == Hold.BOTH ? core.hold : token.hold();
        cursor.skip(Meaning.ST);
        boolean doubling = cursor.is(Meaning.EACH)
                && line.text.substring(token.start(), token.end()).equalsIgnoreCase("double");
        if (doubling) {
            core.name = line.lastName;
            core.manner = Manner.INCREASE;
            core.makes = 2;
            return;
        }
        overOtherName();
        if (tog(core, number)) {
            return;
        }
        if (manyInOne(core)) {
            return;
        }
        int before = cursor.at;
        if (cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
        core.twoSteps =
                before == cursor.at && shapes(cursor.peek()) && cursor.peek().spaced();
        if (cursor.is(Meaning.INC)) {
            core.manner = Manner.INCREASE;
            core.makes = cursor.next().value();
        } else if (cursor.is(Meaning.DEC) || cursor.is(Meaning.INVDEC)) {
            core.manner = cursor.is(Meaning.INVDEC) ? Manner.INVISIBLE_DECREASE : Manner.DECREASE;
            core.takes = cursor.next().value();
        } else if (cursor.is(Meaning.SPECIAL)) {
            special(core);
            core.swallowedNumber = true;
        } else {
            cursor.at = before;
        }
    }

    /** "dc2inc", "sc3inc": so many in one stitch, as "dc2tog" is so many together. */
    private boolean manyInOne(Core core) {
        boolean jammed = cursor.is(Meaning.NUMBER)
                && !cursor.peek().spaced()
                && cursor.is(1, Meaning.INC)
                && !cursor.peek(1).spaced()
                && cursor.peek().value() > 1;
        if (jammed) {
            core.manner = Manner.INCREASE;
            core.makes = cursor.next().value();
            cursor.next();
        }
        return jammed;
    }

    /** "single crochets (sc)", "dc (sc in US)": the same stitch in other words. */
    private void overOtherName() {
        boolean name = cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.STITCH);
        int shut = cursor.is(2, Meaning.SHUT) ? 2 : cursor.is(2, Meaning.IN) && cursor.is(4, Meaning.SHUT) ? 4 : 0;
        boolean placed = cursor.is(shut + 1, Meaning.IN) || cursor.is(shut + 1, Meaning.EACH);
        if (name && shut > 0 && placed) {
            cursor.at += shut + 1;
        }
    }

    private static boolean shapes(Token token) {
        return token.is(Meaning.INC) || token.is(Meaning.DEC) || token.is(Meaning.INVDEC);
    }

    /** "2tog", "2 tog", "next 2 sts tog", "in next 2 sts together", "tog", after the stitch. */
    private boolean tog(Core core, int number) {
        int before = cursor.at;
        boolean every = cursor.is(Meaning.EACH)
                && cursor.is(1, Meaning.ORDINAL)
                && cursor.is(2, Meaning.AND)
                && cursor.is(3, Meaning.ORDINAL)
                && (cursor.is(4, Meaning.TOG) || cursor.is(4, Meaning.ST) && cursor.is(5, Meaning.TOG));
        if (every) {
            core.place = new Place();
            core.place.everyNth = cursor.peek(1).value();
            core.manner = Manner.DECREASE;
            core.takes = 2;
            cursor.at += cursor.is(4, Meaning.TOG) ? 5 : 6;
            return true;
        }
        cursor.skip(Meaning.DASH);
        cursor.skip(Meaning.IN, Meaning.THE);
        cursor.skip(Meaning.NEXT, Meaning.LAST, Meaning.FIRST, Meaning.EACH);
        int over = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 0;
        cursor.skip(Meaning.NEXT, Meaning.DASH);
        cursor.skip(Meaning.ST, Meaning.STITCH, Meaning.CHAIN);
        if (!cursor.is(Meaning.TOG) || over == 0 && number == 0 && before + 1 < cursor.at) {
            cursor.at = before;
            return false;
        }
        cursor.next();
        core.manner = Manner.DECREASE;
        core.swallowedNumber = over == 0 && number > 1;
        core.takes = over > 0 ? over : number > 1 ? number : 2;
        return true;
    }

    /** "2sctog", "sctog". */
    private void together(Core core, int number) {
        Token token = cursor.next();
        core.name = token.name() == null ? line.lastName : token.name();
        core.manner = Manner.DECREASE;
        core.takes = Math.max(2, number);
        core.swallowedNumber = true;
    }

    private void special(Core core) {
        Token token = cursor.next();
        core.manner = Manner.GROUP;
        core.name = token.name();
        core.own = core.name == StitchName.OTHER ? singular(line.text.substring(token.start(), token.end())) : "";
        core.makes = switch (token.name()) {
            case SHELL -> 5;
            case VSTITCH -> 2;
            case PICOT -> 0;
            default -> 1;
        };
        core.takes = token.name() == StitchName.PICOT ? 0 : 1;
    }

    private static String singular(String name) {
        String lower = name.toLowerCase(java.util.Locale.ROOT);
        return lower.endsWith(" sts") ? lower.substring(0, lower.length() - 1) : lower;
    }

    private void increase(Core core) {
        Token token = cursor.next();
        core.manner = Manner.INCREASE;
        core.makes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        cursor.skip(Meaning.ST);
        boolean close = !cursor.peek().spaced() && !cursor.peek(1).spaced();
        boolean joined = (cursor.is(Meaning.DASH)
                        || cursor.is(Meaning.NUMBER) && cursor.peek().value() == 1)
                && cursor.is(1, Meaning.STITCH);
        if (close && joined) {
            cursor.next();
            core.name = cursor.next().name();
        }
        core.stitchAfter = token.name() == null
                && cursor.is(Meaning.STITCH)
                && !cursor.peek(1).is(Meaning.NUMBER);
        if (core.stitchAfter) {
            core.name = cursor.next().name();
        }
    }

    private void decrease(Core core) {
        Token token = cursor.next();
        core.manner = token.is(Meaning.INVDEC) ? Manner.INVISIBLE_DECREASE : Manner.DECREASE;
        core.takes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        int before = cursor.at;
        cursor.skip(Meaning.IN, Meaning.THE, Meaning.NEXT);
        boolean every = cursor.accept(Meaning.EACH) && !cursor.is(Meaning.ST);
        boolean over =
                before < cursor.at && cursor.is(Meaning.NUMBER) && cursor.peek().value() <= 4;
        if (over) {
            core.takes = cursor.next().value();
            core.fills = every;
            cursor.skip(Meaning.ST, Meaning.STITCH);
            cursor.skip(Meaning.TOG);
        } else {
            cursor.at = before;
        }
    }

    /** "leave 5 sts unworked" passes stitches over; "leave a gap" does not. */
    private boolean leaves(Token token) {
        return Fold.of(line.text.charAt(token.start())) == 'l';
    }

    private boolean unworkedAhead() {
        for (int ahead = 1; ahead < 7; ahead++) {
            if (cursor.is(ahead, Meaning.UNWORKED)) {
                return true;
            }
        }
        return false;
    }

    /** "skip", "skip next 2 sts", "miss 1". */
    private void skip(Core core) {
        cursor.next();
        core.manner = Manner.SKIP;
        core.makes = 0;
        core.name = line.lastName;
        cursor.skip(Meaning.THE, Meaning.OF);
        boolean first = cursor.accept(Meaning.FIRST);
        core.rest = cursor.is(Meaning.REMAINING);
        cursor.skip(Meaning.NEXT, Meaning.LAST, Meaning.OTHER, Meaning.REMAINING);
        core.rest &= !cursor.is(Meaning.NUMBER);
        core.skipped = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 1;
        core.first = first;
        cursor.skip(Meaning.DASH);
        core.space = cursor.is(Meaning.SPACE)
                || cursor.is(Meaning.CHAINSPACE)
                || cursor.is(Meaning.CHAIN) && (cursor.is(2, Meaning.NUMBER) || cursor.is(1, Meaning.NUMBER));
        if (core.space && cursor.accept(Meaning.CHAIN)) {
            cursor.skip(Meaning.DASH, Meaning.NUMBER);
        }
        cursor.skip(
                Meaning.ST,
                Meaning.STITCH,
                Meaning.CHAIN,
                Meaning.SPACE,
                Meaning.CHAINSPACE,
                Meaning.INC,
                Meaning.DEC,
                Meaning.SPECIAL);
        cursor.accept(Meaning.UNWORKED);
    }

    private Node finish(int begin, int before, Core core) {
        if (core.manner == Manner.SKIP) {
            return skipped(begin, before, core);
        }
        int number = before > 0 ? before : numberAfter();
        boolean after = before == 0 && number > 0;
        if (cursor.is(Meaning.MORE) && cursor.is(1, Meaning.IN)) {
            cursor.next();
        }
        overAdverb();
        overAside();
        Place place = core.place != null ? core.place : line.places.read();
        if (number == 0 && place == null && core.manner != Manner.CHAIN) {
            number = numberAfter();
        }
        Hold hold = hold(core, place);
        Place where = place == null || place.holdOnly() ? null : place;
        Work unit = new Work(
                cursor.since(begin),
                core.manner,
                core.name,
                core.takes,
                core.makes,
                Times.ONCE,
                hold,
                Target.NEXT,
                core.own);
        remember(core);
        Node node = new Meant(line, unit, number, timesNumber, after, where).node();
        if (where == null && core.manner == Manner.PLAIN) {
            line.unplaced(node, unit, number);
        }
        if (core.fills && node instanceof Work work && work.times().equals(Times.ONCE)) {
            return work.times(Times.FULL);
        }
        if (cursor.done() && cursor.is(-1, Meaning.NUMBER) && before == 0 && shapes(core)) {
            return orCount(node, unit);
        }
        return core.twoSteps || core.stitchAfter ? orTwoSteps(core, unit, number, node) : node;
    }

    /** "3 dc dec": three decreases in dc, or three dc and then a decrease; "inc dc" likewise. */
    private Node orTwoSteps(Core core, Work unit, int number, Node oneName) {
        Times often = Times.of(Math.max(1, number));
        Times plainly = core.twoSteps ? often : Times.ONCE;
        Work plain = new Work(unit.span(), Manner.PLAIN, unit.stitch(), 1, 1, plainly, unit.hold(), Target.NEXT, "");
        List<Node> steps = core.twoSteps ? List.of(plain, unit) : List.of(unit.times(often), plain);
        Node two = new Node.Sequence(unit.span(), steps);
        return new Node.Choice(unit.span(), Habit.NAME_AND_SHAPING, List.of(oneName, two));
    }

    private static boolean shapes(Core core) {
        return core.takes != core.makes && core.manner != Manner.CHAIN && core.manner != Manner.GROUP;
    }

    /** "inc 12", "dec all 6" at the line's end: so many of them, or the round's count. */
    private Node orCount(Node many, Work unit) {
        Token number = cursor.peek(-1);
        line.counts.add(new WrittenLine.Count(number.value(), number.span(), false));
        return new Node.Choice(many.span(), Habit.BARE_COUNT, List.of(many, unit.times(Times.FULL)));
    }

    private Node skipped(int begin, int before, Core core) {
        line.stitches = true;
        int stitches = Math.max(core.skipped, before);
        boolean space = core.space || line.foundation;
        Work skip = new Work(
                cursor.since(begin),
                Manner.SKIP,
                core.name,
                space ? 0 : 1,
                0,
                core.rest ? Times.FULL : Times.of(stitches),
                Hold.BOTH,
                space ? Target.SPACE : Target.NEXT,
                "");
        Node nothing = new Node.Note(skip.span(), Feature.OTHER);
        if (core.first && !line.begun && line.startCounts) {
            return nothing;
        }
        return core.first && !line.begun && line.openStart
                ? new Node.Choice(skip.span(), line.startHabit, List.of(skip, nothing))
                : skip;
    }

    private void remember(Core core) {
        line.stitches = true;
        line.worked = true;
        line.beyondSlips |= core.name != StitchName.SLIP && core.name != StitchName.CHAIN;
        boolean named = core.name != StitchName.CHAIN && core.name != StitchName.SLIP && core.name != StitchName.PICOT;
        if (named && core.manner != Manner.SKIP) {
            line.lastName = core.name;
        }
        line.names.add(core.name);
    }

    private Hold hold(Core core, Place place) {
        if (core.hold != Hold.BOTH) {
            return core.hold;
        }
        return place != null && place.hold != Hold.BOTH ? place.hold : line.hold;
    }

    /** "sc 5", "sc5", "ch-3"; 0 where none. A number that says how often ("x 5", "5 times") is not read here. */
    private int numberAfter() {
        int before = cursor.at;
        if (cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
        int placed = timesThenPlace();
        placed = placed > 0 ? placed : inBrackets();
        if (placed > 0) {
            return placed;
        }
        boolean count = cursor.is(2, Meaning.NUMBER) && !cursor.is(3, Meaning.ST) && !cursor.is(3, Meaning.TOTAL);
        boolean often = cursor.is(1, Meaning.TIMES) && !count || cursor.is(1, Meaning.MORE);
        if (!cursor.is(Meaning.NUMBER) || often || beginsNext()) {
            cursor.at = before;
            return 0;
        }
        int number = cursor.next().value();
        overRange();
        cursor.skip(Meaning.ST);
        return number;
    }

    /** "sc 2-3": how many is left to whoever works it, so there is no count. */
    private void overRange() {
        boolean range = cursor.is(Meaning.DASH)
                && !cursor.peek().spaced()
                && cursor.is(1, Meaning.NUMBER)
                && !cursor.peek(1).spaced();
        if (range && !cursor.peek(2).meaning().makes()) {
            line.doubt(cursor.peek(1).span());
            cursor.at += 2;
        }
    }

    /** "sc (12), then …": how many, in brackets that cannot be the count; 0 where it is not so. */
    private int inBrackets() {
        boolean number = cursor.is(Meaning.OPEN)
                && cursor.is(1, Meaning.NUMBER)
                && cursor.is(2, Meaning.SHUT)
                && cursor.peek(-1).meaning().makes();
        Meaning after = cursor.peek(3).meaning();
        boolean goesOn = after.parts()
                || after == Meaning.AND
                || after == Meaning.SHUT
                || after == Meaning.EQUALS
                || after == Meaning.OPEN && cursor.is(4, Meaning.NUMBER);
        if (!number || !goesOn || after != Meaning.SHUT && !stepsAhead(3)) {
            return 0;
        }
        cursor.at += 3;
        return cursor.peek(-2).value();
    }

    /** Whether another step, or a count, comes after. */
    private boolean stepsAhead(int from) {
        for (int ahead = from; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            boolean count = cursor.is(ahead, Meaning.NUMBER) && !cursor.is(ahead - 1, Meaning.CHAIN);
            if (count
                    || cursor.peek(ahead).meaning().makes()
                            && !cursor.is(ahead, Meaning.SLIP)
                            && !cursor.is(ahead, Meaning.CHAIN)) {
                return true;
            }
        }
        return false;
    }

    /** "x 6 in ring", "6 times in next st", "twice in next st": how many, and then where; 0 where it is not so. */
    private int timesThenPlace() {
        boolean counter = cursor.is(Meaning.COUNTER);
        boolean before = cursor.is(Meaning.TIMES) && cursor.is(1, Meaning.NUMBER);
        boolean behind = cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.TIMES);
        int length = counter ? 1 : 2;
        if (!(before || behind || counter) || !cursor.is(length, Meaning.IN)) {
            return 0;
        }
        int number = before ? cursor.peek(1).value() : cursor.peek().value();
        cursor.at += length;
        return number;
    }

    /** Whether the number at the cursor belongs to the step after it: "sc 2 inc" written without marks between. */
    private boolean beginsNext() {
        Token number = cursor.peek();
        Token after = cursor.peek(1);
        if (after.is(Meaning.ST)) {
            return cursor.is(2, Meaning.IN) || cursor.is(2, Meaning.EACH);
        }
        if (!after.meaning().makes()
                && !after.is(Meaning.ST)
                && !(after.is(Meaning.HOLD) && cursor.peek(2).meaning().makes())) {
            return false;
        }
        return number.spaced();
    }
}
