package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads one step and how often it is done: "5 dc", "2 sc in next st", "dc2tog x 6", "inc in each st around". */
final class StitchReader {
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
        boolean swallowedNumber;
        boolean steps;
    }

    private boolean timesNumber;

    /** "5", "a", "6 x"; 0 where none. */
    private int numberBefore() {
        timesNumber = false;
        if (!cursor.is(Meaning.NUMBER)) {
            return 0;
        }
        int number = cursor.next().value();
        if (cursor.is(Meaning.TIMES) && isCore(1)) {
            cursor.next();
            timesNumber = true;
        } else if (cursor.is(Meaning.DASH) && !cursor.peek().spaced() && isCore(1)) {
            cursor.next();
        }
        return number;
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
            case SKIP -> skip(core);
            case INC -> increase(core);
            case DEC, INVDEC -> decrease(core);
            case TOG -> together(core, number);
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
        if (cursor.is(Meaning.ST)) {
            int before = cursor.at;
            cursor.next();
            boolean place = line.places.starts();
            cursor.at = place ? cursor.at : before;
            return place;
        }
        return cursor.is(Meaning.IN) || cursor.is(Meaning.EACH);
    }

    private void stitch(Core core, int number) {
        Token token = cursor.next();
        core.name = token.name();
        core.hold = token.hold() == Hold.BOTH ? core.hold : token.hold();
        if (tog(core, number)) {
            return;
        }
        int before = cursor.at;
        if (cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
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

    /** "2tog", "2 tog", "next 2 sts tog", "in next 2 sts together", "tog", after the stitch. */
    private boolean tog(Core core, int number) {
        int before = cursor.at;
        cursor.skip(Meaning.DASH);
        cursor.skip(Meaning.IN, Meaning.THE);
        cursor.skip(Meaning.NEXT, Meaning.LAST);
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
        core.makes = switch (token.name()) {
            case SHELL -> 5;
            case VSTITCH -> 2;
            case PICOT -> 0;
            default -> 1;
        };
        core.takes = token.name() == StitchName.PICOT ? 0 : 1;
    }

    private void increase(Core core) {
        Token token = cursor.next();
        core.manner = Manner.INCREASE;
        core.makes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        cursor.skip(Meaning.ST);
    }

    private void decrease(Core core) {
        Token token = cursor.next();
        core.manner = token.is(Meaning.INVDEC) ? Manner.INVISIBLE_DECREASE : Manner.DECREASE;
        core.takes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        int before = cursor.at;
        cursor.skip(Meaning.IN, Meaning.THE, Meaning.NEXT);
        boolean over =
                before < cursor.at && cursor.is(Meaning.NUMBER) && cursor.peek().value() <= 4;
        if (over) {
            core.takes = cursor.next().value();
            cursor.skip(Meaning.ST, Meaning.STITCH);
            cursor.skip(Meaning.TOG);
        } else {
            cursor.at = before;
        }
    }

    /** "skip", "skip next 2 sts", "miss 1". */
    private void skip(Core core) {
        cursor.next();
        core.manner = Manner.SKIP;
        core.makes = 0;
        core.name = line.lastName;
    }

    private Node finish(int begin, int before, Core core) {
        int number = before;
        boolean after = false;
        if (number == 0) {
            number = numberAfter(core);
            after = number > 0;
        }
        Place place = line.places.read();
        if (number == 0 && after(place, core)) {
            number = numberAfter(core);
        }
        Times more = more();
        Work unit = new Work(
                cursor.since(begin),
                core.manner,
                core.name,
                core.takes,
                core.makes,
                Times.ONCE,
                hold(core, place),
                Target.NEXT,
                "");
        line.stitches = true;
        if (core.name != StitchName.CHAIN && core.name != StitchName.SLIP && core.manner != Manner.SKIP) {
            line.lastName = core.name;
        }
        line.names.add(core.name);
        Node node = new Meant(line, unit, number, timesNumber || after && explicitTimes, after, place).node();
        return more == null ? node : new Node.Repeat(cursor.since(begin), List.of(node), more, List.of());
    }

    private boolean after(Place place, Core core) {
        return place == null && core.manner != Manner.CHAIN;
    }

    private Hold hold(Core core, Place place) {
        if (core.hold != Hold.BOTH) {
            return core.hold;
        }
        return place != null && place.hold != Hold.BOTH ? place.hold : line.hold;
    }

    private boolean explicitTimes;

    /** "sc 5", "sc x 5", "ch-3", "inc 6 times", "inc (6 times)"; 0 where none. */
    private int numberAfter(Core core) {
        explicitTimes = false;
        int before = cursor.at;
        boolean bracket = cursor.is(Meaning.OPEN);
        if (bracket) {
            cursor.next();
        }
        boolean times = cursor.is(Meaning.TIMES) || cursor.is(Meaning.STAR) && cursor.is(1, Meaning.NUMBER);
        if (times || cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
        if (!cursor.is(Meaning.NUMBER) || !bracket && beginsNext(times)) {
            cursor.at = before;
            return counter();
        }
        int number = cursor.next().value();
        boolean timed = cursor.accept(Meaning.TIMES);
        explicitTimes = times || timed;
        if (bracket && !(explicitTimes && cursor.accept(Meaning.SHUT))) {
            cursor.at = before;
            return 0;
        }
        return number;
    }

    private int counter() {
        if (cursor.is(Meaning.COUNTER)) {
            explicitTimes = true;
            return cursor.next().value();
        }
        return 0;
    }

    /** Whether the number at the cursor belongs to the step after it: "sc 2 inc" written without marks between. */
    private boolean beginsNext(boolean times) {
        Token number = cursor.peek();
        Token after = cursor.peek(1);
        if (times || !after.meaning().makes() && !after.is(Meaning.ST) && !after.is(Meaning.HOLD)) {
            return false;
        }
        return number.spaced();
    }

    /** "each 6 times" and the like after a step that already has its number. */
    private Times more() {
        if (cursor.is(Meaning.COUNTER)) {
            return Times.of(cursor.next().value());
        }
        return null;
    }
}
