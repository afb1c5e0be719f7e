package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Note;
import roundwright.notation.RepeatWords.Often;

/** Reads a list of steps: the whole line, or what stands between brackets or asterisks. */
final class SequenceReader {
    /** Brackets deeper than this are not read: no writer goes past three. */
    private static final int DEEPEST = 12;

    private final Reading line;
    private final Cursor cursor;
    private final StitchReader stitches;
    private final NoteReader notes;
    private final RepeatWords repeats;
    private final CountReader counts;
    private final StartReader starts;
    private final PlaceFirst places;
    private final StrangeWords strangers;
    private final EvenReader evens;
    private final Groups groups;
    private final OtherLoops otherLoops;
    private final int depth;
    private final boolean inStars;
    private final Items items = new Items();
    /** "6 times: …": how often all that follows is done; null where that is not said. */
    private Times timesOfAll;

    SequenceReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
        this.stitches = new StitchReader(line);
        this.notes = new NoteReader(line);
        this.repeats = new RepeatWords(cursor);
        this.counts = new CountReader(line);
        this.places = new PlaceFirst(line, items);
        this.strangers = new StrangeWords(line, items, notes, 0);
        this.starts = new StartReader(line, items, strangers);
        this.evens = new EvenReader(line, items, strangers);
        this.groups = new Groups(line, items);
        this.otherLoops = new OtherLoops(line, items);
        this.depth = 0;
        this.inStars = false;
    }

    /** A list within another: what reads single steps is the same for both. */
    private SequenceReader(SequenceReader outer, boolean inStars) {
        this.line = outer.line;
        this.cursor = outer.cursor;
        this.stitches = outer.stitches;
        this.notes = outer.notes;
        this.repeats = outer.repeats;
        this.counts = outer.counts;
        this.depth = outer.depth + 1;
        this.places = new PlaceFirst(line, items);
        this.strangers = new StrangeWords(line, items, notes, depth);
        this.starts = new StartReader(line, items, strangers);
        this.evens = new EvenReader(line, items, strangers);
        this.groups = new Groups(line, items);
        this.otherLoops = new OtherLoops(line, items);
        this.inStars = inStars;
    }

    /** The whole of a line. */
    List<Node> line() {
        counts.first();
        while (!cursor.done()) {
            item();
        }
        strangers.end();
        starts.finish();
        if (timesOfAll != null) {
            items.parted = true;
            items.repeat(new Often(timesOfAll, false, false, false, false), cursor.since(0));
        }
        items.mayFill();
        return items.nodes;
    }

    /** What stands before the bracket or the asterisk closes. */
    private List<Node> inside() {
        while (!cursor.done() && !closes()) {
            item();
        }
        items.onceInside();
        return items.nodes;
    }

    private boolean closes() {
        if (inStars) {
            boolean repeat = cursor.is(Meaning.REPEAT) || cursor.is(Meaning.OPEN) && cursor.is(1, Meaning.REPEAT);
            boolean repeatFromStar = repeat && (repeats.starAhead() || !repeats.closingStarAhead());
            return cursor.is(Meaning.STAR) || cursor.is(Meaning.STARS) || repeatFromStar;
        }
        return cursor.is(Meaning.SHUT);
    }

    private void item() {
        Token token = cursor.peek();
        if (token.is(Meaning.IN) && items.empty() && !line.worked && line.places.overPartAhead()) {
            return;
        }
        boolean along =
                token.is(Meaning.AROUND) || token.is(Meaning.ACROSS) || token.is(Meaning.ROUND) || token.is(Meaning.IN);
        if (along && line.worked && line.places.thing(1)) {
            if (items.lastPlain()) {
                items.fillLast();
            }
            int begin = cursor.at;
            if (++line.things > 1) {
                line.features.add(Feature.JOIN_PARTS);
            }
            items.addApart(notes.read(Feature.OTHER));
            strangers.numbersIn(begin);
            return;
        }
        if (line.yarns.run(0)) {
            step(token);
            return;
        }
        if (colourMark()
                || otherLoops.read()
                || counted()
                || timesFirst()
                || evens.spread()
                || repeated()
                || starts.read()
                || evens.rounds()
                || evens.between()) {
            return;
        }
        if (!strangers.remark(token)) {
            if (token.meaning().parts()) {
                strangers.mark();
            } else {
                word(token);
            }
        }
    }

    /** "(B) 6 dc, (A) 2 dc": the yarn of the step that follows. */
    private boolean colourMark() {
        int mark = line.yarns.mark();
        if (mark > 0) {
            items.addApart(notes.colourMark(mark));
        }
        return mark > 0;
    }

    private void word(Token token) {
        switch (token.meaning()) {
            case AND -> {
                cursor.next();
                items.parted |= token.value() == 0 || cursor.is(Meaning.OPEN);
            }
            case OPEN -> bracket();
            case STAR, STARS -> stars();
            case CONTINUE -> {
                cursor.next();
                if (cursor.is(Meaning.TO) && cursor.peek(1).meaning().makes()) {
                    cursor.next();
                }
            }
            case THE -> strangers.article();
            case WORK, NOW, START, FILLER, FROM, ENDING, STEP, TOTAL -> cursor.next();
            case SHUT -> {
                cursor.next();
                items.parted = true;
            }
            case EVENLY -> evens.evenly();
            case IT -> strangers.pronoun();
            case LOST -> line.hole(cursor.next().span());
            case EQUALS, FOR, OTHER, PER -> cursor.next();
            case EVEN -> evens.even();
            case PLAIN -> plain();
            case IN -> {
                if (line.yarns.in()) {
                    cursor.next();
                    items.addApart(notes.colour());
                } else if (cursor.is(1, Meaning.HOLD) && cursor.peek(1).hold() == Hold.BOTH) {
                    line.hold = Hold.BOTH;
                    cursor.at += 2;
                } else {
                    step(token);
                }
            }
            case HOLD -> line.hold = cursor.next().hold();
            default -> step(token);
        }
    }

    /** "plain" as a step of a list, or for all the round. */
    private void plain() {
        Node node = stitches.read();
        if (node == null) {
            evens.plain();
        } else {
            items.add(node);
        }
    }

    private boolean counted() {
        int begin = cursor.at;
        if (depth > 0 || !counts.read()) {
            return false;
        }
        int end = cursor.at;
        cursor.at = begin;
        if (cursor.is(Meaning.OPEN)) {
            starts.counting();
        }
        cursor.at = end;
        items.addApart(new Note(cursor.since(begin), Feature.OTHER));
        return true;
    }

    /** "6 x (dc, inc)". */
    private boolean timesFirst() {
        boolean times = !(inStars && cursor.is(2, Meaning.STAR))
                && cursor.is(1, Meaning.TIMES)
                && (cursor.is(2, Meaning.OPEN) || cursor.is(2, Meaning.STAR));
        boolean first =
                cursor.is(Meaning.NUMBER) && (times || cursor.is(1, Meaning.STAR) && cursor.is(2, Meaning.OPEN));
        int begin = cursor.at;
        Often all = items.empty() && !line.worked && depth == 0 ? repeats.ofAll(notes) : null;
        if (all != null) {
            timesOfAll = all.times();
            return true;
        }
        if (cursor.is(Meaning.NUMBER)
                && cursor.is(1, Meaning.TIMES)
                && cursor.is(2, Meaning.NUMBER)
                && cursor.peek(3).meaning().makes()) {
            return timesStep();
        }
        boolean straight = (items.parted || items.empty()) && repeats.straight();
        if (!straight && (!first || countAfterTimes())) {
            return false;
        }
        int number = cursor.next().value();
        cursor.at += straight ? 0 : 1;
        int before = items.nodes.size();
        if (cursor.is(Meaning.OPEN)) {
            bracket();
        } else {
            stars();
        }
        if (items.nodes.size() == before + 1
                && items.last() instanceof Node.Choice choice
                && choice.habit() == Habit.BARE_BRACKET) {
            Node.Repeat filling = (Node.Repeat) choice.options().get(0);
            items.nodes.set(before, new Node.Repeat(cursor.since(begin), filling.body(), Times.of(number), List.of()));
        }
        return true;
    }

    /** "6 x 2 dc in one st". */
    private boolean timesStep() {
        int begin = cursor.at;
        int number = cursor.next().value();
        cursor.next();
        Node step = stitches.read();
        items.add(new Node.Repeat(cursor.since(begin), List.of(step), Times.of(number), List.of()));
        return true;
    }

    /** "… 6 times (18 sts)": what stands in the bracket is the count. */
    private boolean countAfterTimes() {
        int begin = cursor.at;
        cursor.at += 2;
        boolean torn = cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.OPEN);
        boolean count = !items.empty() && !torn && counts.ahead();
        cursor.at = begin;
        return count;
    }

    private boolean repeated() {
        int begin = cursor.at;
        if (items.empty()
                && (cursor.is(Meaning.NUMBER)
                        || cursor.is(Meaning.REPEAT) && (cursor.is(1, Meaning.OPEN) || cursor.is(1, Meaning.STAR)))) {
            return cursor.accept(Meaning.REPEAT);
        }
        boolean into = cursor.is(Meaning.COUNTER)
                && (cursor.is(1, Meaning.IN) || cursor.is(1, Meaning.EACH))
                && (items.empty() || cursor.is(-1, Meaning.WORK) || cursor.is(-1, Meaning.AND));
        boolean opens = into || items.empty() && cursor.is(Meaning.STAR);
        Often often = opens ? null : repeats.read();
        if (often == null) {
            return false;
        }
        if (items.empty() && !line.worked && often.times().fills() && strangers.stepsAhead()) {
            return true;
        }
        if (items.empty() && !line.worked && often.times().fills() && line.hold != Hold.BOTH) {
            evens.even(cursor.since(begin));
            return true;
        }
        items.starred = starsIn(begin);
        boolean apart = cursor.is(-2, Meaning.STAR) || cursor.is(-2, Meaning.SHUT);
        boolean orCount = (often.repeat() || apart && cursor.peek(-1).spaced())
                && !often.times().fills()
                && depth == 0
                && (cursor.done() || apart && new CountEnds(cursor).nothingAfter(0))
                && cursor.is(-1, Meaning.NUMBER)
                && !cursor.is(-2, Meaning.TIMES);
        if (orCount) {
            Token number = cursor.peek(-1);
            line.counts.add(new WrittenLine.Count(number.value(), number.span(), false));
        }
        if (!items.repeat(often, cursor.since(begin), orCount)) {
            line.doubt(cursor.since(begin));
        }
        return true;
    }

    private boolean starsIn(int begin) {
        for (int place = begin - cursor.at; place < 0; place++) {
            if (cursor.is(place, Meaning.STAR) || cursor.is(place, Meaning.STARS)) {
                return true;
            }
        }
        return false;
    }

    private void bracket() {
        if (cursor.is(1, Meaning.MAGIC) && cursor.is(2, Meaning.SHUT)) {
            cursor.next();
            starts.read();
            cursor.accept(Meaning.SHUT);
            return;
        }
        boolean missing = cursor.is(1, Meaning.SKIP) && cursor.is(2, Meaning.SHUT);
        if (missing || !line.counted && line.worked && notes.onlyMarks()) {
            line.hole(notes.bracket().span());
            return;
        }
        if (cursor.is(1, Meaning.NUMBER) && cursor.is(2, Meaning.OPEN) && !line.counted) {
            line.doubt(cursor.peek(1).span());
        }
        if (depth >= DEEPEST || notes.aside() && !line.yarns.run(1)) {
            aside();
            return;
        }
        int begin = cursor.at;
        boolean parted = items.parted || items.empty();
        cursor.next();
        if (cursor.is(Meaning.COMMA)) {
            line.doubt(cursor.since(begin));
        }
        if (!cursor.shutsAhead()) {
            items.fence();
            boolean number =
                    cursor.is(Meaning.NUMBER) && !cursor.peek(1).meaning().makes() && !cursor.is(1, Meaning.ST);
            if (!cursor.hasCount() || number && cursor.is(1, Meaning.OPEN)) {
                line.doubt(cursor.since(begin));
            }
            return;
        }
        List<Node> body = new SequenceReader(this, false).inside();
        cursor.accept(Meaning.SHUT);
        groups.add(begin, body, parted);
    }

    /** A bracket that tells something; one that stands where a step should leaves the line unread. */
    private void aside() {
        starts.counting();
        boolean listed = items.parted && !cursor.is(-1, Meaning.STOP) && !items.empty();
        boolean between = !items.parted && !items.empty() && !line.counted;
        boolean strange = notes.strangeBracket();
        Node aside = notes.bracket();
        boolean item =
                listed && (cursor.is(Meaning.COMMA) || cursor.is(Meaning.SHUT) || strange && cursor.is(Meaning.IN));
        boolean nothing = line.unplaced == null || items.empty();
        boolean hole = strange && (nothing && cursor.is(Meaning.IN) || depth > 0 && items.empty());
        boolean step = notes.stepAhead(0) && !cursor.is(Meaning.AND) || cursor.is(Meaning.IN);
        if (item || hole || strange && between && step) {
            line.doubt(aside.span());
        }
        if (items.empty()) {
            items.addApart(aside);
        } else {
            items.add(aside);
        }
    }

    private void stars() {
        int begin = cursor.at;
        cursor.next();
        if (cursor.is(Meaning.COMMA) && !inStars) {
            line.doubt(cursor.since(begin));
        }
        if (inStars || depth >= DEEPEST || cursor.done()) {
            return;
        }
        List<Node> body = new SequenceReader(this, true).inside();
        boolean numberFollows = cursor.is(Meaning.STAR)
                && cursor.is(1, Meaning.NUMBER)
                && !cursor.peek(2).meaning().makes();
        if (!numberFollows) {
            cursor.skip(Meaning.STAR, Meaning.STARS);
        }
        groups.add(begin, body, true);
    }

    /** "in each corner sp work (3 tr, ch 2, 3 tr)": the place before its group; false, the cursor unmoved, where that does not stand there. */
    private boolean groupAfterPlace() {
        int begin = cursor.at;
        Place place = line.places.read();
        cursor.skip(Meaning.WORK, Meaning.COLON, Meaning.COMMA);
        if (place == null || !place.noun || !cursor.is(Meaning.OPEN) || !groups.onlySteps()) {
            cursor.at = begin;
            return false;
        }
        cursor.next();
        List<Node> body = new SequenceReader(this, false).inside();
        cursor.accept(Meaning.SHUT);
        groups.add(cursor.since(begin), body, place);
        return true;
    }

    private void step(Token token) {
        boolean perhapsCount = depth == 0
                && (items.parted || afterGroup())
                && (line.taken || !items.empty())
                && counts.perhaps(items::repeating);
        if (token.is(Meaning.TIMES)) {
            line.doubt(token.span());
        }
        Node node = stitches.read();
        if (node != null) {
            if (node instanceof Node.Repeat) {
                items.dropPlain();
            }
            items.addStep(perhapsCount ? orCount(node) : node);
            return;
        }
        if (line.places.starts() && (groupAfterPlace() || places.read())) {
            return;
        }
        switch (token.meaning()) {
            case NOTE -> note(token);
            case MARKER -> items.addApart(notes.read(Feature.MARKER));
            case COLOUR, WITH -> {
                if (cursor.is(1, Meaning.SHUT) && token.is(Meaning.WITH)) {
                    line.doubt(token.span());
                }
                items.addApart(notes.colour());
            }
            case NOT -> items.addApart(notes.read(Feature.OTHER));
            default -> strangers.read();
        }
    }

    /** Words around the stitches; those that say where a step goes leave it open. */
    private void note(Token token) {
        if (notes.takesTogether()) {
            cursor.next();
            return;
        }
        int begin = cursor.at;
        boolean close =
                !items.parted && !items.empty() && !cursor.peek(-1).meaning().parts();
        String word = line.text.substring(token.start(), token.end()).toLowerCase(java.util.Locale.ROOT);
        Node note = notes.read(token.feature());
        boolean where = close && (word.equals("after") || word.equals("before") || word.equals("if"));
        if (where && !line.counted) {
            line.doubt(note.span());
        }
        items.addApart(note);
        strangers.placesIn(begin);
    }

    /** "*1 dc, inc* 9 dc": what stands after a bracket with no number of its own may be the count. */
    private boolean afterGroup() {
        return items.last() instanceof Node.Choice choice && choice.habit() == Habit.BARE_BRACKET;
    }

    private static Node orCount(Node steps) {
        return new Node.Choice(
                steps.span(), Habit.NUMBER_AT_END, List.of(steps, new Note(steps.span(), Feature.OTHER)));
    }
}
