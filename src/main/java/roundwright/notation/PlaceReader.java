package roundwright.notation;

import roundwright.notation.Node.Target;

/** Reads where a stitch goes: "in next 5 sts", "in each st around", "to last 3 sts", "in 2nd ch from hook". */
final class PlaceReader {
    private final ToCorner corners;
    private final Reading line;
    private final Cursor cursor;
    private final String text;
    private final PlaceStarts starts;
    private final WholeReader whole;

    PlaceReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
        this.text = line.text;
        this.starts = new PlaceStarts(cursor, line.yarns);
        this.whole = new WholeReader(line);
        this.corners = new ToCorner(text, cursor);
    }

    /** Whether words at the cursor begin to say where. */
    boolean starts() {
        return starts.starts();
    }

    /** Whether a part of the piece is named so many tokens on: "leg 1", "the third leg", "the thumb gap". */
    boolean thing(int ahead) {
        return starts.thing(ahead);
    }

    /** Reads over a thing that is no part of a round: "over the elastic", "round the thumb gap"; false where none stands there. */
    boolean overThing() {
        return starts.overThing();
    }

    /** Reads over "on the second leg," before the steps; false where it is not so. */
    boolean overPartAhead() {
        return starts.overPartAhead();
    }

    /** Reads over "of the second leg" behind so many stitches. */
    void overPart() {
        if (cursor.is(Meaning.OF) && starts.thing(1)) {
            whole.read(new Place());
        }
    }

    void overWords() {
        starts.overWords();
    }

    void overEachRound() {
        starts.overEachRound();
    }

    /** Reads all the words that say where; null where there are none. */
    Place read() {
        if (!starts.startsPlace()) {
            return null;
        }
        int begin = cursor.at;
        Place place = new Place();
        while (word(place)) {
            // each call reads one word more
        }
        boolean dangling = cursor.is(-1, Meaning.THE) || cursor.is(-1, Meaning.OF);
        boolean ofNext = cursor.is(-1, Meaning.NEXT)
                && (cursor.is(-2, Meaning.OF) || cursor.is(-2, Meaning.THE) && cursor.is(-3, Meaning.OF));
        if (ofNext && !place.noun && place.number == 0) {
            line.hole(cursor.since(begin));
        }
        boolean torn = cursor.is(-1, Meaning.NEXT) && cursor.is(-2, Meaning.THE) && cursor.is(-3, Meaning.IN);
        if (torn && cursor.is(Meaning.OPEN) && !line.worked && cursor.hasCount()) {
            line.doubt(cursor.since(begin));
        }
        if (dangling && (cursor.is(Meaning.COMMA) || cursor.is(Meaning.FINISH))) {
            line.hole(cursor.since(begin));
        }
        boolean vague =
                !place.noun && place.first && !place.each && (cursor.is(Meaning.UNKNOWN) || cursor.is(Meaning.COLOUR));
        if (vague) {
            line.doubt(cursor.since(begin));
        }
        if (place.empty()) {
            cursor.at = begin;
            return null;
        }
        return place;
    }

    private boolean word(Place place) {
        Token token = cursor.peek();
        return switch (token.meaning()) {
            case IN, AT -> in(place);
            case SLASH -> perStitch(place);
            case THE, ONLY -> over();
            case OF -> whole.read(place);
            case FROM -> fromBelow(place);
            case TO -> corners.read(place) || to(place);
            case NUMBER -> number(place);
            case AROUND, ACROSS, TOEND, ROUND -> around(place, token);
            case HOLD -> hold(place, token);
            case BETWEEN -> {
                place.between = true;
                place.target = Target.SPACE;
                yield over();
            }
            default -> which(place, token) || noun(place, token);
        };
    }

    /** "in back loops"; but "every third loop" counts loops, which some call the stitches. */
    private boolean hold(Place place, Token token) {
        Token each = cursor.peek(-1);
        boolean third = token.hold() == Hold.THIRD && Fold.of(text.charAt(token.start())) == 't';
        if (third && each.is(Meaning.EACH) && text.startsWith("very", each.start() + 1)) {
            place.everyNth = 3;
            place.noun = true;
        } else {
            place.hold = token.hold();
        }
        return over();
    }

    private boolean over() {
        cursor.next();
        return true;
    }

    /** "2sc/st", "in first/next st". */
    private boolean perStitch(Place place) {
        boolean firstOrNext = place.first && cursor.is(1, Meaning.NEXT);
        boolean per = firstOrNext || starts.perStitch() && !place.noun;
        if (per) {
            cursor.next();
            place.next = true;
            place.first &= !firstOrNext;
        }
        return per;
    }

    /** "from the round below", "from the 2nd ch", after the stitch. */
    private boolean fromBelow(Place place) {
        int ordinal = cursor.is(1, Meaning.THE) ? 2 : 1;
        if (line.foundation && starts.fromChain()) {
            place.ordinal = cursor.peek(ordinal).value();
            place.fromChain = true;
            place.noun = true;
            cursor.at += ordinal + 2;
            cursor.accept(Meaning.HOOK);
            return false;
        }
        boolean below = place.noun && cursor.is(1, Meaning.PREVIOUS);
        cursor.at += below ? 2 : 0;
        return below;
    }

    private boolean around(Place place, Token token) {
        if (token.is(Meaning.ROUND) && cursor.is(1, Meaning.NUMBER)) {
            return false;
        }
        if (!place.noun && token.is(Meaning.ROUND) && starts.aroundPost()) {
            cursor.next();
            return true;
        }
        if (!place.noun
                && (token.is(Meaning.AROUND) && starts.aroundPost()
                        || token.is(Meaning.ACROSS) && starts.whichStitches())) {
            cursor.next();
            return true;
        }
        if (place.next && !place.each && place.number <= 1) {
            return false;
        }
        cursor.next();
        place.around = true;
        return !cursor.is(Meaning.TO) || starts.toPlace(1);
    }

    private boolean in(Place place) {
        if (place.noun && !cursor.is(1, Meaning.HOLD) && !(cursor.is(1, Meaning.THE) && cursor.is(2, Meaning.HOLD))) {
            return false;
        }
        cursor.next();
        return true;
    }

    private boolean which(Place place, Token token) {
        if (place.noun && !token.is(Meaning.REMAINING) && !place.top) {
            return false;
        }
        place.noun &= !(place.top && (token.is(Meaning.EACH) || token.is(Meaning.NEXT)));
        switch (token.meaning()) {
            case EACH, PER ->
                place.each = !(cursor.is(1, Meaning.IN)
                        && (cursor.is(2, Meaning.NEXT) || cursor.is(2, Meaning.THE) && cursor.is(3, Meaning.NEXT)));
            case NEXT -> place.next = true;
            case SAME -> place.same = true;
            case LAST -> place.last = true;
            case FIRST -> place.first = true;
            case REMAINING -> place.remaining = true;
            case ORDINAL -> {
                if (place.each && cursor.is(1, Meaning.AND) && cursor.is(2, Meaning.ORDINAL)) {
                    cursor.at += 2;
                }
                if (token.value() == 3 && cursor.is(1, Meaning.SPACE)) {
                    cursor.next();
                    place.hold = Hold.THIRD;
                } else {
                    ordinal(place, token.value());
                }
            }
            case OTHER -> ordinal(place, 2);
            case SKIP -> {
                if (cursor.peek(-1).is(Meaning.COMMA)
                        || !cursor.peek(1).meaning().makes() && !cursor.is(1, Meaning.ST)) {
                    return false;
                }
                place.same = true;
            }
            default -> {
                return false;
            }
        }
        cursor.next();
        return true;
    }

    private static void ordinal(Place place, int value) {
        if (place.each) {
            place.everyNth = value;
        } else {
            place.ordinal = value;
        }
    }

    private boolean noun(Place place, Token token) {
        return switch (token.meaning()) {
            case ST -> (!place.noun || place.top) && named(place, token);
            case STITCH, INC, DEC, INVDEC, SPECIAL, SLIP -> stitchAsNoun(place, token);
            case CHAIN -> chain(place);
            case SPACE, PETAL, CHAINSPACE -> space(place, token);
            case RING, MAGIC, IT -> ring(place, token);
            case ENDING -> cursor.peek(-1).is(Meaning.IN) && line.foundation && named(place, token);
            case OTHERSIDE -> otherSide(place);
            case LAYERS -> {
                place.layers = true;
                yield named(place, token);
            }
            case AS, COUNTSAS -> asJoin(place);
            case JOIN -> (cursor.is(-1, Meaning.THE) || cursor.is(-1, Meaning.IN)) && point(place, token);
            case TCHAIN -> firstChain(place, token) || point(place, token);
            case HOOK, TOP, MARKER, PREVIOUS, BASE, CORNERST -> point(place, token);
            default -> false;
        };
    }

    /** Over a noun, which may be a plural. */
    private boolean named(Place place, Token token) {
        place.plural |= Fold.of(text.charAt(token.end() - 1)) == 's';
        cursor.next();
        place.noun = true;
        return true;
    }

    private boolean space(Place place, Token token) {
        if (token.is(Meaning.PETAL) && !place.each && !place.next) {
            return false;
        }
        place.target = Target.SPACE;
        place.loop |= token.is(Meaning.SPACE) && Fold.of(text.charAt(token.start())) == 'l';
        named(place, token);
        corners.overSpace(token);
        return true;
    }

    private boolean ring(Place place, Token token) {
        place.target = token.is(Meaning.IT) && !line.ring ? place.target : Target.RING;
        if (token.is(Meaning.MAGIC)) {
            line.features.add(Feature.MAGIC_RING);
        }
        return named(place, token);
    }

    private boolean otherSide(Place place) {
        cursor.next();
        cursor.skip(Meaning.OF, Meaning.THE, Meaning.FOUNDATION, Meaning.NEXT, Meaning.SAME, Meaning.EACH);
        if (cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.CHAIN)) {
            place.number = cursor.next().value();
        }
        cursor.skip(Meaning.CHAIN, Meaning.ST);
        place.otherSide = true;
        place.noun = true;
        return false;
    }

    /** "ch 2, 6 dc in first ch": the chain that the line has just made. */
    private boolean firstChain(Place place, Token token) {
        if (line.begun || line.chains != 2) {
            return false;
        }
        place.fromHook = true;
        return named(place, token);
    }

    /** A point of the round that is one stitch: the base, the join, the corner, the top of the chain. */
    private boolean point(Place place, Token token) {
        boolean overStitch = false;
        switch (token.meaning()) {
            case HOOK -> place.fromHook = true;
            case CORNERST -> place.next = true;
            case BASE -> place.same = true;
            case JOIN -> {
                place.same = true;
                place.asJoin = true;
                overStitch = true;
            }
            default -> place.top = true;
        }
        cursor.next();
        if (overStitch) {
            cursor.skip(Meaning.ST);
        }
        place.noun = true;
        return true;
    }

    /** "in next 5 sc": the stitch is what is worked into, once something says which ones. */
    private boolean stitchAsNoun(Place place, Token token) {
        boolean step = token.is(Meaning.INC) || token.is(Meaning.DEC) || token.is(Meaning.INVDEC);
        if (step && (cursor.is(1, Meaning.NEXT) || cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.NUMBER))) {
            return false;
        }
        boolean told = place.each
                || place.next
                || place.same
                || place.last
                || place.first
                || place.remaining
                || place.number > 0
                || place.ordinal > 0
                || place.top
                || place.between;
        boolean bare = cursor.peek(-1).is(Meaning.IN)
                || cursor.peek(-1).is(Meaning.THE)
                || cursor.peek(-1).is(Meaning.OF)
                || cursor.peek(-1).is(Meaning.TO);
        if (place.noun || !told && !bare) {
            return false;
        }
        cursor.next();
        place.noun = true;
        place.pairs = token.name() == StitchName.VSTITCH && token.is(Meaning.SPECIAL);
        place.plural |= text.charAt(token.end() - 1) == 's';
        cursor.accept(Meaning.ST);
        andSpaces(place);
        return true;
    }

    /** "in each sc and ch-1 sp": the spaces between the stitches too. */
    private void andSpaces(Place place) {
        int space = cursor.is(1, Meaning.EACH) ? 2 : 1;
        if (!place.each || !cursor.is(Meaning.AND)) {
            return;
        }
        boolean chained = cursor.is(space, Meaning.CHAIN)
                && cursor.is(space + 1, Meaning.DASH)
                && cursor.is(space + 2, Meaning.NUMBER)
                && cursor.is(space + 3, Meaning.SPACE);
        boolean chains = cursor.is(space, Meaning.CHAIN)
                && !cursor.is(space + 1, Meaning.DASH)
                && !cursor.is(space + 1, Meaning.NUMBER);
        if (chains) {
            cursor.at += space + 1;
        } else if (chained || cursor.is(space, Meaning.CHAINSPACE)) {
            place.alsoSpaces = true;
            cursor.at += chained ? space + 4 : space + 1;
        }
    }

    /** "ch", "ch-1 sp", "ch 3" in "top of ch 3". */
    private boolean chain(Place place) {
        if (place.noun && !place.top && !place.same) {
            return false;
        }
        cursor.next();
        place.noun = true;
        place.fromHook |= line.foundation && !line.begun && place.ordinal > 1 && line.chains >= place.ordinal;
        place.chain = !place.top;
        place.chainNamed = place.chain;
        place.plural |= text.charAt(cursor.peek(-1).end() - 1) == 's';
        int before = cursor.at;
        cursor.accept(Meaning.DASH);
        boolean numbered = cursor.accept(Meaning.NUMBER);
        if (numbered && (cursor.is(Meaning.SPACE) || cursor.is(1, Meaning.SPACE) && cursor.is(Meaning.DASH))) {
            cursor.skip(Meaning.DASH, Meaning.SPACE);
            place.target = Target.SPACE;
        } else if (numbered && overChains(place)) {
            place.target = Target.SPACE;
        } else if (!numbered || !place.top && !place.same) {
            cursor.at = before;
        }
        return true;
    }

    /** Whether "over ch3" has just been read: what chains bridge, not that many chains. */
    private boolean overChains(Place place) {
        int chain = cursor.is(-2, Meaning.DASH) ? -3 : -2;
        boolean bare = !place.each && !place.next && !place.last && !place.first && place.ordinal == 0;
        return bare && cursor.is(chain - 1, Meaning.IN) && !cursor.peek(-1).spaced() && cursor.clauseEnds();
    }

    private boolean asJoin(Place place) {
        if (!place.same) {
            return false;
        }
        cursor.next();
        cursor.skip(Meaning.THE, Meaning.LAST, Meaning.FIRST, Meaning.PREVIOUS);
        if (cursor.is(Meaning.NUMBER) && (cursor.is(1, Meaning.STITCH) || cursor.is(1, Meaning.ST))) {
            cursor.next();
        }
        place.asJoin |= cursor.is(Meaning.JOIN)
                || cursor.is(Meaning.SLIP)
                || cursor.is(Meaning.CHAIN)
                || cursor.is(Meaning.TCHAIN);
        cursor.skip(Meaning.JOIN, Meaning.SLIP, Meaning.CHAIN, Meaning.TCHAIN, Meaning.ST, Meaning.STITCH, Meaning.INC);
        if (cursor.is(-1, Meaning.CHAIN) && !cursor.peek(1).meaning().makes()) {
            cursor.skip(Meaning.DASH, Meaning.NUMBER);
        }
        return true;
    }

    private boolean number(Place place) {
        if (place.noun || place.number > 0) {
            return false;
        }
        Meaning after = cursor.peek(1).meaning();
        if (cursor.is(-1, Meaning.REMAINING) && cursor.peek().value() == 1 && after.makes()) {
            return false;
        }
        if (cursor.peek().value() == 1 && (after == Meaning.MAGIC || after == Meaning.RING)) {
            cursor.next();
            return true;
        }
        boolean told = place.each || place.next || place.last || place.first || place.remaining;
        boolean spaceOfChains =
                after == Meaning.CHAINSPACE || after == Meaning.DASH && cursor.is(2, Meaning.CHAINSPACE);
        if (spaceOfChains) {
            cursor.at += after == Meaning.DASH ? 2 : 1;
            return true;
        }
        boolean ends = after.parts()
                || after == Meaning.SHUT
                || after == Meaning.FINISH
                || after == Meaning.AND
                || after == Meaning.TOEND
                || after == Meaning.AROUND
                || after == Meaning.REPEAT
                || after == Meaning.OPEN
                || after == Meaning.STAR;
        boolean noun = ends && cursor.peek(-1).is(Meaning.IN)
                || after == Meaning.ST
                || after == Meaning.STITCH
                || after == Meaning.CHAIN
                || after == Meaning.SPACE
                || after == Meaning.REMAINING
                || after == Meaning.NEXT
                || after == Meaning.LAST;
        if (!told && !noun || told && (cursor.is(1, Meaning.TIMES) || cursor.is(1, Meaning.ROUND))) {
            return false;
        }
        place.number = cursor.next().value();
        return true;
    }

    /** "to last 3 sts", "to end", "until 3 sts remain"; "to" also for "in" with slip stitches. */
    private boolean to(Place place) {
        if (!starts.toPlace(1)) {
            return false;
        }
        int before = cursor.at;
        cursor.next();
        cursor.skip(Meaning.THE);
        boolean last = cursor.accept(Meaning.LAST);
        int number = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 1;
        boolean noun = cursor.is(Meaning.ST) || cursor.is(Meaning.STITCH) || cursor.is(Meaning.CHAIN);
        boolean remain = noun && cursor.is(1, Meaning.REMAINING);
        if ((last || remain) && (place.noun || place.around || !place.next)) {
            cursor.skip(Meaning.ST, Meaning.STITCH, Meaning.CHAIN, Meaning.REMAINING);
            place.leave = number;
            place.noun = true;
            return false;
        }
        cursor.at = before + 1;
        return !place.noun;
    }
}
