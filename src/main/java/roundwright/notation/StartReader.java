package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads how rounds begin and end: rings, starting chains, foundations, joins and turns. */
final class StartReader {
    /** So many chains, and more, are worked along where the line names their other side. */
    private static final int SHORTEST_OVAL = 4;

    /** So many chains, and more, that are joined before anything is worked are a ring, and start no round. */
    static final int SHORTEST_RING = 4;

    private final Reading line;
    private final Cursor cursor;
    private final Items items;
    private final StrangeWords strangers;
    private final CountingChain counting;

    private final MagicRingReader rings;

    StartReader(Reading line, Items items, StrangeWords strangers) {
        this.rings = new MagicRingReader(line, items, strangers);
        this.strangers = strangers;
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
        this.counting = new CountingChain(line, items);
    }

    /** Reads what a bracket at the cursor says of the starting chain; nothing that is not of it. */
    void counting() {
        counting.read();
    }

    /** Reads one such thing at the cursor; false where there is none. */
    boolean read() {
        return switch (cursor.peek().meaning()) {
            case MAGIC -> rings.read();
            case RING -> !line.worked && (chainsAsRing() || rings.read());
            case YOUHAVE -> !line.worked && line.yarns.ring() && rings.read();
            case SPACE -> !line.begun() && line.yarns.loop() && rings.read();
            case CHAIN -> chain();
            case NUMBER -> numbered();
            case SLIP -> slip(false);
            case JOIN, CLOSE -> join();
            case FORM -> form();
            case TURN -> turn();
            case COUNTSAS -> counting.read();
            case OPEN -> counting.firstStitch();
            default -> false;
        };
    }

    /** "3 ch", "6 mr", "1 sl st". */
    private boolean numbered() {
        if (cursor.is(1, Meaning.SLIP) && cursor.peek().value() == 1) {
            cursor.next();
            boolean joins = slip(false);
            cursor.at -= joins ? 0 : 1;
            return joins;
        }
        return cursor.is(1, Meaning.CHAIN) && chain() || cursor.is(1, Meaning.MAGIC) && rings.numbered();
    }

    /** "4ch, ring." */
    private boolean chainsAsRing() {
        int begin = cursor.at;
        boolean ring = line.chains >= SHORTEST_RING && !line.ring && items.empty();
        cursor.next();
        boolean alone = ring && cursor.clauseEnds();
        cursor.at = alone ? cursor.at : begin;
        return alone && ringOfChains(begin);
    }

    /** "ch 3" before any stitch starts the round, or is a foundation. */
    private boolean chain() {
        if (!items.empty() || line.begun) {
            return false;
        }
        int begin = cursor.at;
        int number = chains();
        if (number == 0 || cursor.is(Meaning.SPACE)) {
            cursor.at = begin;
            return false;
        }
        started(begin, number);
        return true;
    }

    /** "ch 3", "ch-3", "3 ch"; 0 where it is neither. */
    private int chains() {
        if (cursor.is(Meaning.NUMBER)) {
            int number = cursor.next().value();
            cursor.next();
            return number;
        }
        cursor.next();
        cursor.skip(Meaning.DASH);
        int number = cursor.is(Meaning.NUMBER) && !cursor.peek(1).meaning().makes()
                ? cursor.next().value()
                : 0;
        cursor.skip(Meaning.ST, Meaning.CHAIN);
        return number;
    }

    private void started(int begin, int number) {
        Span span = cursor.since(begin);
        line.chains = number;
        line.chainsClear = !sizes();
        if (along()) {
            line.features.add(
                    ring() ? Feature.RING_OF_CHAINS : number <= 3 ? Feature.CHAIN_START : Feature.FOUNDATION_CHAIN);
            line.foundation = true;
            items.addApart(foundation(span, number));
            return;
        }
        line.features.add(Feature.STARTING_CHAIN);
        String written = "ch " + number;
        Work apart = new Work(
                span, Manner.STARTING_CHAIN, StitchName.CHAIN, 0, 0, Times.ONCE, Hold.BOTH, Target.NEXT, written);
        Work counts = new Work(
                span,
                Manner.STARTING_CHAIN,
                StitchName.CHAIN,
                line.ring ? 0 : 1,
                1,
                Times.ONCE,
                Hold.BOTH,
                Target.NEXT,
                written);
        line.startHabit = number == 1 ? Habit.SINGLE_CHAIN : number == 2 ? Habit.STARTING_CHAIN : Habit.TALL_CHAIN;
        items.addApart(new Choice(span, line.startHabit, List.of(apart, counts)));
        line.openStart = true;
    }

    /** "15 + 1", "15 (17, 19)", "15/17": more than one number of chains. */
    private boolean sizes() {
        int figure = cursor.is(Meaning.OPEN) || cursor.peek().meaning().parts() ? 1 : 0;
        boolean more = !cursor.done() && line.text.charAt(cursor.peek().start()) == '+';
        return more
                || figure > 0
                        && cursor.is(figure, Meaning.NUMBER)
                        && !cursor.peek(figure + 1).meaning().makes();
    }

    /** Of a chain that is worked along, the last chains may stand for a first tall stitch: "ch 4, 11 tr in 4th ch from hook". */
    private Node foundation(Span span, int number) {
        Note note = new Note(span, Feature.FOUNDATION_CHAIN);
        return standsTall(number) ? new Choice(span, Habit.FOUNDATION_COUNTS, List.of(note, standing(span))) : note;
    }

    /** Whether so many chains may stand for a tall stitch. */
    static boolean standsTall(int chains) {
        return chains >= 3 && chains <= 5;
    }

    /** The last chains of a foundation as its first stitch. */
    static Work standing(Span span) {
        return new Work(
                span, Manner.STARTING_CHAIN, StitchName.CHAIN, 0, 1, Times.ONCE, Hold.BOTH, Target.FOUNDATION, "");
    }

    private boolean alongChain() {
        for (int i = 0; i < items.nodes.size(); i++) {
            if (items.nodes.get(i) instanceof Choice choice && choice.habit() == Habit.CHAINS_BELOW) {
                return true;
            }
        }
        return false;
    }

    /** At the line's end: a starting chain of a round that goes into a ring stands in no stitch below. */
    void finish() {
        if (line.ring && items.plainTillRing()) {
            items.intoRing();
        }
        boolean along = !line.ring && alongChain();
        for (int i = 0; along && i < items.nodes.size(); i++) {
            if (items.nodes.get(i) instanceof Work work && work.manner() == Manner.STARTING_CHAIN && work.takes() > 0) {
                Work apart = work.in(Target.FOUNDATION, 0);
                items.nodes.set(i, new Choice(work.span(), Habit.CHAINS_BELOW, List.of(apart, work)));
            }
        }
        for (int i = 0; line.ring && i < items.nodes.size(); i++) {
            Node node = items.nodes.get(i);
            if (node instanceof Choice choice
                    && choice.habit() == line.startHabit
                    && choice.options().get(1) instanceof Work counts) {
                items.nodes.set(
                        i,
                        new Choice(
                                choice.span(),
                                choice.habit(),
                                List.of(choice.options().get(0), counts.in(Target.RING, 0))));
            } else if (node instanceof Work work && work.manner() == Manner.STARTING_CHAIN) {
                items.nodes.set(i, work.in(Target.RING, 0));
            }
        }
    }

    /** Whether the rest of the line works into the chain: "… from hook", "form a ring". */
    private boolean along() {
        for (int ahead = 0; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            boolean side = line.chains > SHORTEST_OVAL && cursor.is(ahead, Meaning.OTHERSIDE);
            boolean nth = line.chains >= SHORTEST_RING
                    && cursor.is(ahead, Meaning.ORDINAL)
                    && cursor.is(ahead + 1, Meaning.CHAIN)
                    && !cursor.is(ahead + 2, Meaning.OF);
            if (nth || cursor.is(ahead, Meaning.HOOK) || cursor.is(ahead, Meaning.FORM) || side) {
                return true;
            }
            boolean another = cursor.is(ahead, Meaning.CHAIN)
                    && cursor.is(ahead + 1, Meaning.NUMBER)
                    && (cursor.peek(ahead - 1).meaning().parts() || cursor.is(ahead - 1, Meaning.OPEN));
            if (another && ahead > 0) {
                return false;
            }
        }
        return false;
    }

    private boolean ring() {
        for (int ahead = 0; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            if (cursor.is(ahead, Meaning.FORM)) {
                return true;
            }
        }
        return false;
    }

    private boolean join() {
        int begin = cursor.at;
        if (!line.worked && joinsWithStitch()) {
            return true;
        }
        boolean drawn = drawsClosed(cursor.next());
        if (drawn && !cursor.is(Meaning.WITH) && !cursor.is(Meaning.SLIP)) {
            line.features.add(Feature.CLOSE);
            items.addApart(new Note(cursor.since(begin), Feature.CLOSE));
            return true;
        }
        cursor.skip(Meaning.JOIN, Meaning.WITH, Meaning.THE, Meaning.ROUND, Meaning.BETWEEN);
        if (!line.worked && standing()) {
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return true;
        }
        if (cursor.is(Meaning.COLOUR) || cursor.is(Meaning.NOTE) || line.yarns.capital(cursor.peek())) {
            cursor.at = begin;
            items.addApart(new NoteReader(line).read(Feature.COLOUR_CHANGE));
            return true;
        }
        if (cursor.is(Meaning.SLIP)) {
            return slip(true);
        }
        boolean chains = line.chains >= SHORTEST_RING && items.empty();
        if (!line.worked && (ringAhead() || chains)) {
            overPlace();
            return ringOfChains(begin);
        }
        overPlace();
        joined(begin);
        return true;
    }

    /** "Join Color B with sc in any corner": over the words before the stitch, which is the first of the round. */
    private boolean joinsWithStitch() {
        int with = 1;
        while (!cursor.is(with, Meaning.WITH) || !cursor.is(with + 1, Meaning.STITCH)) {
            if (cursor.peek(with).meaning().parts() || cursor.is(with, Meaning.FINISH)) {
                return false;
            }
            with++;
        }
        boolean placed = cursor.is(with + 2, Meaning.IN) && cursor.is(0, Meaning.JOIN);
        if (placed) {
            int begin = cursor.at;
            cursor.at += with + 1;
            items.addApart(new Note(cursor.since(begin), Feature.COLOUR_CHANGE));
        }
        return placed;
    }

    /** "Join with a standing tr": the yarn is joined with the first stitch of the round. */
    private boolean standing() {
        int stitch = cursor.is(Meaning.FILLER) ? 1 : 0;
        return cursor.is(stitch, Meaning.STITCH)
                && line.text.startsWith("standing", cursor.peek().start());
    }

    /** "pull tight", "draw closed": a ring or a hole is drawn together, and no round is joined. */
    private boolean drawsClosed(Token token) {
        char first = Fold.of(line.text.charAt(token.start()));
        return token.is(Meaning.CLOSE) && (first == 'p' || first == 'd');
    }

    /** "join into a ring", before any stitch. */
    private boolean ringAhead() {
        for (int ahead = 0; !cursor.peek(ahead).meaning().parts() && !cursor.is(ahead, Meaning.FINISH); ahead++) {
            if (cursor.is(ahead, Meaning.RING)) {
                return true;
            }
        }
        return false;
    }

    private boolean ringOfChains(int begin) {
        line.features.add(Feature.RING_OF_CHAINS);
        line.foundation = false;
        line.ring = true;
        line.ringChains = line.chains;
        for (int i = 0; i < items.nodes.size(); i++) {
            if (items.nodes.get(i) instanceof Choice choice
                    && choice.options().size() == 2
                    && choice.habit() != Habit.BARE_LIST) {
                items.nodes.set(i, new Note(choice.span(), Feature.RING_OF_CHAINS));
            }
        }
        line.openStart = false;
        items.addApart(new Note(cursor.since(begin), Feature.RING_OF_CHAINS));
        return true;
    }

    private void joined(int begin) {
        if (!line.begun && line.chains == 0 && !line.worked) {
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return;
        }
        line.features.add(Feature.JOINED);
        items.addApart(new Work(
                cursor.since(begin), Manner.JOIN, StitchName.SLIP, 0, 0, Times.ONCE, Hold.BOTH, Target.NEXT, ""));
    }

    /** "ch-4": the hyphen parts nothing. */
    private boolean jammedDash() {
        return cursor.is(Meaning.DASH)
                && (cursor.is(-1, Meaning.CHAIN) || cursor.is(-1, Meaning.TCHAIN))
                && cursor.is(1, Meaning.NUMBER);
    }

    private void overPlace() {
        while (!cursor.done()
                && (!cursor.peek().meaning().parts() || jammedDash())
                && !cursor.is(Meaning.OPEN)
                && !cursor.is(Meaning.SHUT)
                && !cursor.is(Meaning.EQUALS)
                && !cursor.is(Meaning.FORM)
                && !cursor.is(Meaning.FOR)
                && !cursor.is(Meaning.YOUHAVE)
                && !cursor.is(Meaning.TOTAL)
                && !((cursor.is(Meaning.NUMBER) || cursor.is(Meaning.STAR) || cursor.is(Meaning.STARS))
                        && new CountEnds(cursor).closes())
                && !cursor.is(Meaning.TURN)
                && !(cursor.is(Meaning.AND) && cursor.is(1, Meaning.CHAIN))) {
            cursor.next();
        }
    }

    /** A slip stitch that joins: after the word, to the first stitch or the top of the chain, or as the last thing. */
    private boolean slip(boolean told) {
        int begin = cursor.at;
        cursor.next();
        if (!line.worked && ringAhead()) {
            overPlace();
            return ringOfChains(begin);
        }
        if (!told && !line.worked && !cursor.is(-2, Meaning.OPEN) && !cursor.is(-2, Meaning.STAR) && chainAhead()) {
            overPlace();
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return true;
        }
        int finish = told || !line.begun ? 0 : finishing();
        if (finish > 0 || !told && line.begun && last()) {
            cursor.at += finish;
            line.names.add(StitchName.SLIP);
            Span span = cursor.since(begin);
            Work join = new Work(span, Manner.JOIN, StitchName.SLIP, 0, 0, Times.ONCE, Hold.BOTH, Target.NEXT, "");
            Work stitch = new Work(span, Manner.PLAIN, StitchName.SLIP, 1, 1, Times.ONCE, Hold.BOTH, Target.NEXT, "");
            items.addApart(new Choice(span, Habit.LAST_SLIP_STITCH, List.of(join, stitch)));
            return true;
        }
        if (told || joins()) {
            overPlace();
            if (!line.worked && line.chains > 2 && items.empty()) {
                return ringOfChains(begin);
            }
            joined(begin);
            return true;
        }
        cursor.at = begin;
        return false;
    }

    /** "ss in next st and fasten off": how many tokens the place is that stands before the end of the piece; 0 where it is not so. */
    private int finishing() {
        int place = cursor.is(Meaning.IN) ? 1 : 0;
        if (!cursor.is(place, Meaning.NEXT) && !cursor.is(place, Meaning.FIRST)) {
            return 0;
        }
        place += cursor.is(place + 1, Meaning.ST) || cursor.is(place + 1, Meaning.STITCH) ? 2 : 1;
        boolean more = cursor.is(place, Meaning.AND) || cursor.is(place, Meaning.COMMA);
        boolean ends = more && cursor.peek(place + 1).feature() == Feature.FASTEN_OFF;
        return ends ? place : 0;
    }

    /** "Sl st in next 2 sts, ch 3, …": only a way to where the round begins. */
    private boolean chainAhead() {
        int ahead = 0;
        while (!cursor.is(ahead, Meaning.FINISH)
                && (!cursor.peek(ahead).meaning().parts()
                        || cursor.is(ahead, Meaning.DASH) && cursor.is(ahead - 1, Meaning.CHAIN))) {
            ahead++;
        }
        int chain = cursor.is(ahead + 1, Meaning.NUMBER) ? ahead + 2 : ahead + 1;
        boolean space = cursor.is(ahead - 1, Meaning.SPACE) || cursor.is(ahead - 1, Meaning.CHAINSPACE);
        if (space && cursor.is(ahead, Meaning.COMMA)) {
            return true;
        }
        return cursor.is(chain, Meaning.CHAIN) && !cursor.is(chain + 1, Meaning.SPACE);
    }

    /** Whether a slip stitch with nothing said of it is the last thing in the line but its count. */
    private boolean last() {
        boolean alone = cursor.peek().meaning().parts()
                || cursor.is(Meaning.OPEN)
                || cursor.is(Meaning.FINISH)
                || cursor.is(Meaning.EQUALS)
                || cursor.is(Meaning.YOUHAVE)
                || cursor.is(Meaning.TOTAL);
        for (int ahead = 0; alone && !cursor.is(ahead, Meaning.FINISH); ahead++) {
            Meaning meaning = cursor.peek(ahead).meaning();
            if (meaning == Meaning.INC
                    || meaning == Meaning.DEC
                    || meaning == Meaning.STAR
                    || meaning == Meaning.REPEAT
                    || meaning == Meaning.TIMES
                    || meaning == Meaning.SKIP
                    || meaning == Meaning.STITCH && !cursor.is(ahead - 1, Meaning.NUMBER)) {
                return false;
            }
        }
        return alone && !line.taken;
    }

    private boolean joins() {
        int ahead = 0;
        boolean first = false;
        while (!cursor.peek(ahead).meaning().parts()
                && !cursor.is(ahead, Meaning.OPEN)
                && !cursor.is(ahead, Meaning.FINISH)) {
            switch (cursor.peek(ahead).meaning()) {
                case FIRST, TOP, JOIN, CLOSE, FORM, TCHAIN, START -> first = true;
                case TO -> first |= ahead == 0 && cursor.is(1, Meaning.SPECIAL);
                case ORDINAL ->
                    first |= cursor.is(ahead + 1, Meaning.CHAIN)
                            || cursor.is(ahead + 1, Meaning.OF)
                            || cursor.peek(ahead).value() == 1;
                default -> {}
            }
            ahead++;
        }
        return first && (line.begun || line.chains > 0) || line.counted;
    }

    private boolean form() {
        int begin = cursor.at;
        cursor.next();
        overPlace();
        return ringOfChains(begin);
    }

    private boolean turn() {
        int begin = cursor.at;
        cursor.next();
        line.features.add(Feature.TURNED);
        strangers.afterTurn();
        items.addApart(new Note(cursor.since(begin), Feature.TURNED));
        return true;
    }
}
