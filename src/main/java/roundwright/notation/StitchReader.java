package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads one step and how often it is done: "5 dc", "2 sc in next st", "dc2tog x 6", "inc in each st around". */
final class StitchReader {
    /** So many stitches, and more, may go over a thing that has no stitches of its own. */
    private static final int SMALL = 3;

    private final Reading line;
    private final Cursor cursor;
    private final StepNumber numbers;
    private final SkipReader skips;
    private final SpecialStitch specials;

    StitchReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
        this.numbers = new StepNumber(line);
        this.skips = new SkipReader(line);
        this.specials = new SpecialStitch(line);
    }

    /** The step at the cursor; null (and the cursor unmoved) where none begins there. */
    Node read() {
        int begin = cursor.at;
        if (line.yarns.run(0)) {
            return colourRun(begin);
        }
        int number = numbers.before();
        StepCore core = core(begin, number);
        if (core == null) {
            cursor.at = begin;
            return null;
        }
        if (core.swallowedNumber) {
            number = 0;
        }
        return finish(begin, number, core);
    }

    /** "A 2", "2 red": plain stitches in a colour. */
    private Node colourRun(int begin) {
        int number = cursor.is(Meaning.NUMBER)
                ? cursor.peek().value()
                : cursor.peek(1).value();
        cursor.at += 2;
        StepCore core = new StepCore();
        core.name = line.lastName;
        remember(core);
        line.begun = true;
        line.features.add(Feature.COLOUR_CHANGE);
        Hold hold = hold(core, null);
        Span span = cursor.since(begin);
        return new Work(span, Manner.PLAIN, core.name, 1, 1, Times.of(number), hold, Target.NEXT, "");
    }

    private StepCore core(int begin, int number) {
        StepCore core = new StepCore();
        if (cursor.is(Meaning.HOLD) && numbers.isCore(1)) {
            core.hold = cursor.next().hold();
        }
        Token token = cursor.peek();
        switch (token.meaning()) {
            case STITCH -> stitch(core, number);
            case SPECIAL -> specials.read(core);
            case CHAIN -> simple(core, Manner.CHAIN, 0, 1);
            case SLIP -> simple(core, Manner.PLAIN, 1, 1);
            case SKIP -> {
                if (!skips.begins()) {
                    return null;
                }
                skips.read(core);
            }
            case INC -> increase(core);
            case DEC, INVDEC -> decrease(core);
            case TOG -> {
                if (token.name() == null && number < 2) {
                    return null;
                }
                together(core, number);
            }
            case DRAWN -> {
                return new DrawnLoops(cursor).read(core, line.lastName) ? core : null;
            }
            case PLAIN -> {
                return number > 0 || plainAlone() ? plain(core) : null;
            }
            default -> {
                return any(core, number) ? core : null;
            }
        }
        return core;
    }

    private void simple(StepCore core, Manner manner, int takes, int makes) {
        Token token = cursor.next();
        core.manner = manner;
        core.takes = takes;
        core.makes = makes;
        core.name = token.name();
    }

    /** "2 plain": so many of the stitch that is worked already. */
    private StepCore plain(StepCore core) {
        cursor.next();
        core.name = line.lastName;
        return core;
    }

    /** "(inc, plain) x 6": one plain stitch as an item of a list. */
    private boolean plainAlone() {
        Meaning before = cursor.peek(-1).meaning();
        Meaning after = cursor.peek(1).meaning();
        boolean begins = before == Meaning.OPEN || before == Meaning.STAR;
        boolean listed = begins || line.worked && (before == Meaning.COMMA || before == Meaning.AND);
        return listed && (after == Meaning.SHUT || after == Meaning.STAR || begins && after == Meaning.COMMA);
    }

    /** "3 in next st": the number stands for the stitch too; "1 st in each". */
    private boolean any(StepCore core, int number) {
        if (number == 0 || !line.worked && numbers.strangeBefore()) {
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
        return cursor.is(Meaning.IN) || cursor.is(Meaning.EACH) || numbers.alone();
    }

    private void stitch(StepCore core, int number) {
        Token token = cursor.next();
        core.name = token.name();
        core.hold = token.hold() == Hold.BOTH ? core.hold : token.hold();
        core.takes = token.value() == Lexicon.FOUNDING ? 0 : 1;
        cursor.skip(Meaning.ST);
        if (doubling(token, number)) {
            core.name = line.lastName;
            core.manner = Manner.INCREASE;
            core.makes = 2;
            return;
        }
        overOtherName();
        if (tog(core, number)) {
            return;
        }
        if (manyInOne(core) || ended(token)) {
            return;
        }
        int before = cursor.at;
        if (cursor.is(Meaning.DASH) && !cursor.peek().spaced()) {
            cursor.next();
        }
        boolean dashed = before < cursor.at && number > 0;
        core.twoSteps = shapes(cursor.peek())
                && (dashed || before == cursor.at && cursor.peek().spaced());
        if (cursor.is(Meaning.INC)) {
            core.manner = Manner.INCREASE;
            core.makes = cursor.next().value();
        } else if (cursor.is(Meaning.DEC) || cursor.is(Meaning.INVDEC)) {
            core.manner = cursor.is(Meaning.INVDEC) ? Manner.INVISIBLE_DECREASE : Manner.DECREASE;
            core.takes = cursor.next().value();
        } else if (cursor.is(Meaning.SPECIAL)) {
            specials.read(core);
            core.swallowedNumber = true;
        } else {
            cursor.at = before;
        }
    }

    /** "double each st", "double the next 4 sts": the word is a verb and no stitch. */
    private boolean doubling(Token token, int number) {
        boolean next = cursor.is(Meaning.THE) && cursor.is(1, Meaning.NEXT);
        boolean some = number == 0
                && (next || cursor.is(Meaning.NEXT) && (cursor.is(1, Meaning.NUMBER) || cursor.is(1, Meaning.ST)));
        return (some || cursor.is(Meaning.EACH))
                && line.text.substring(token.start(), token.end()).equalsIgnoreCase("double");
    }

    /** Whether the stitch is parted from what follows: by a full stop that is no part of an abbreviation ("htr. inc"), or as letters are that stand for a step each ("X V"). */
    private boolean ended(Token token) {
        String word = line.text.substring(token.start(), token.end());
        Token next = cursor.peek();
        boolean letters = word.length() == 1 && next.spaced() && next.end() - next.start() == 1;
        return letters || word.endsWith(".") && word.indexOf('.') == word.length() - 1;
    }

    /** "dc2inc", "sc3inc": so many in one stitch, as "dc2tog" is so many together. */
    private boolean manyInOne(StepCore core) {
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
    private boolean tog(StepCore core, int number) {
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
        if (asOne(core, number)) {
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

    /** "2 dc as 1 dc". */
    private boolean asOne(StepCore core, int number) {
        boolean one = number > 1
                && cursor.is(Meaning.AS)
                && cursor.is(1, Meaning.NUMBER)
                && cursor.peek(1).value() == 1
                && (cursor.is(2, Meaning.ST) || cursor.is(2, Meaning.STITCH));
        if (one) {
            cursor.at += 3;
            core.manner = Manner.DECREASE;
            core.swallowedNumber = true;
            core.takes = number;
        }
        return one;
    }

    /** "2sctog", "sctog". */
    private void together(StepCore core, int number) {
        Token token = cursor.next();
        core.name = token.name() == null ? line.lastName : token.name();
        core.manner = Manner.DECREASE;
        core.takes = Math.max(2, number);
        core.swallowedNumber = true;
    }

    private void increase(StepCore core) {
        Token token = cursor.next();
        core.manner = Manner.INCREASE;
        core.makes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        cursor.skip(Meaning.ST);
        byOne(core);
        boolean close = !cursor.peek().spaced() && !cursor.peek(1).spaced();
        boolean joined = (cursor.is(Meaning.DASH)
                        || cursor.is(Meaning.NUMBER) && cursor.peek().value() == 1)
                && cursor.is(1, Meaning.STITCH);
        if (close && joined) {
            cursor.next();
            core.name = cursor.next().name();
        }
        boolean named = cursor.is(Meaning.OF) && cursor.is(1, Meaning.STITCH);
        if (named) {
            cursor.next();
            core.name = cursor.next().name();
        }
        core.stitchAfter = token.name() == null
                && !named
                && cursor.is(Meaning.STITCH)
                && !cursor.peek(1).is(Meaning.NUMBER);
        if (core.stitchAfter) {
            core.name = cursor.next().name();
        }
    }

    /** "inc 1 sc in next sc", "dec 1 st over next 2 sts": by how many, which is no number of increases. */
    private void byOne(StepCore core) {
        boolean stitch = cursor.is(1, Meaning.STITCH) || cursor.is(1, Meaning.ST);
        boolean one = cursor.is(Meaning.NUMBER) && cursor.peek().value() == 1 && stitch;
        if (one && cursor.is(2, Meaning.IN)) {
            core.name = cursor.is(1, Meaning.STITCH) ? cursor.peek(1).name() : core.name;
            cursor.at += 2;
        }
    }

    private void decrease(StepCore core) {
        Token token = cursor.next();
        core.manner = token.is(Meaning.INVDEC) ? Manner.INVISIBLE_DECREASE : Manner.DECREASE;
        core.takes = token.value();
        core.name = token.name() == null ? line.lastName : token.name();
        byOne(core);
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

    private Node finish(int begin, int before, StepCore core) {
        if (core.manner == Manner.SKIP) {
            return skips.node(begin, before, core);
        }
        int number = before > 0 ? before : numbers.after();
        boolean after = before == 0 && number > 0;
        if (cursor.is(Meaning.MORE) && cursor.is(1, Meaning.IN)) {
            cursor.next();
        }
        if (number > SMALL && core.manner == Manner.PLAIN && line.places.overThing()) {
            return overThing(begin, number, core);
        }
        if (number > SMALL && core.manner == Manner.PLAIN) {
            line.places.overEachRound();
            line.places.overPart();
        }
        line.places.overWords();
        boolean toHowMany = shapes(core) && cursor.is(Meaning.TO) && cursor.is(1, Meaning.NUMBER);
        Place place = core.place != null || toHowMany ? core.place : line.places.read();
        if (number == 0 && place == null && core.manner != Manner.CHAIN) {
            number = numbers.after();
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
        Node node = new Meant(line, unit, number, numbers.times, after, where).node();
        if (where == null && core.manner == Manner.PLAIN) {
            line.unplaced(node, unit, number);
        }
        Node both = number == 0 && place == null && core.manner == Manner.PLAIN ? numberBetween(unit) : null;
        return both != null ? both : decided(node, unit, before, number, core);
    }

    /** "dc 2 inc" with no mark between: one dc and two increases, or two dc and one; null where that does not stand there. */
    private Node numberBetween(Work plain) {
        boolean between = cursor.is(Meaning.NUMBER) && cursor.peek().spaced() && shapes(cursor.peek(1));
        int begin = cursor.at;
        int number = cursor.peek().value();
        Node after = between && cursor.peek(1).spaced() ? read() : null;
        if (!(after instanceof Work shaping) || !shaping.times().are(number)) {
            cursor.at = begin;
            return null;
        }
        Span span = plain.span().to(shaping.span());
        Node first = new Node.Sequence(span, List.of(plain, shaping));
        Node second = new Node.Sequence(span, List.of(plain.times(Times.of(number)), shaping.times(Times.ONCE)));
        return new Node.Choice(span, Habit.NUMBER_BETWEEN, List.of(first, second));
    }

    /** The step, or a choice where what stands around it leaves it open. */
    private Node decided(Node node, Work unit, int before, int number, StepCore core) {
        if (core.fills && node instanceof Work work && work.times().once()) {
            return work.times(Times.FULL);
        }
        if (numbers.bracketed && before == 0) {
            return orCountInBrackets(node, unit);
        }
        if (cursor.done() && cursor.is(-1, Meaning.NUMBER) && before == 0 && shapes(core)) {
            return orCount(node, unit);
        }
        return core.twoSteps || core.stitchAfter ? orTwoSteps(core, unit, number, node) : node;
    }

    /** "3 dc dec": three decreases in dc, or three dc and then a decrease; "inc dc" likewise. */
    private Node orTwoSteps(StepCore core, Work unit, int number, Node oneName) {
        Times often = Times.of(Math.max(1, number));
        Times plainly = core.twoSteps ? often : Times.ONCE;
        Work plain = new Work(unit.span(), Manner.PLAIN, unit.stitch(), 1, 1, plainly, unit.hold(), Target.NEXT, "");
        List<Node> steps = core.twoSteps ? List.of(plain, unit) : List.of(unit.times(often), plain);
        Node two = new Node.Sequence(unit.span(), steps);
        return new Node.Choice(unit.span(), Habit.NAME_AND_SHAPING, List.of(oneName, two));
    }

    /** "60 sc over the elastic": on no stitches of a round below. */
    private Node overThing(int begin, int number, StepCore core) {
        remember(core);
        line.begun = true;
        Span span = cursor.since(begin);
        Hold hold = hold(core, null);
        return new Work(span, core.manner, core.name, 0, 1, Times.of(number), hold, Target.RING, "");
    }

    private static boolean shapes(StepCore core) {
        return core.takes != core.makes && core.manner != Manner.CHAIN && core.manner != Manner.GROUP;
    }

    /** "inc 12", "dec all 6" at the line's end: so many of them, or the round's count. */
    private Node orCount(Node many, Work unit) {
        Token number = cursor.peek(-1);
        line.counts.add(new WrittenLine.Count(number.value(), number.span(), false));
        return new Node.Choice(many.span(), Habit.BARE_COUNT, List.of(many, unit.times(Times.FULL)));
    }

    /** "…, sc (2)" at the line's end: so many of them, or one and the round's count. */
    private Node orCountInBrackets(Node many, Work unit) {
        Token number = cursor.peek(-2);
        line.counts.add(new WrittenLine.Count(number.value(), number.span(), false));
        return new Node.Choice(many.span(), Habit.NUMBER_AT_END, List.of(many, unit));
    }

    private void remember(StepCore core) {
        line.stitches = true;
        line.worked = true;
        line.beyondSlips |= core.name != StitchName.SLIP && core.name != StitchName.CHAIN;
        boolean named = core.name != StitchName.CHAIN && core.name != StitchName.SLIP && core.name != StitchName.PICOT;
        if (named && core.manner != Manner.SKIP) {
            line.lastName = core.name;
        }
        line.lastStep = core.name == StitchName.CHAIN ? line.lastStep : core.name;
        line.names.add(core.name);
    }

    private Hold hold(StepCore core, Place place) {
        if (core.hold != Hold.BOTH) {
            return core.hold;
        }
        return place != null && place.hold != Hold.BOTH ? place.hold : line.hold;
    }
}
