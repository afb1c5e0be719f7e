package roundwright.notation;

import roundwright.notation.Node.Note;

/** Reads over words and marks that are no part of any step, and doubts the line where they stand among its steps. */
final class StrangeWords {
    /** So many full stops, and more, are no ellipsis. */
    private static final int LONG_DOTS = 4;

    private final Reading line;
    private final Cursor cursor;
    private final Items items;
    private final NoteReader notes;
    private final int depth;

    StrangeWords(Reading line, Items items, NoteReader notes, int depth) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
        this.notes = notes;
        this.depth = depth;
    }

    /** A mark between steps; one that no writer parts steps with makes the line doubtful. */
    void mark() {
        Token token = cursor.next();
        items.parted = true;
        boolean shaping = cursor.is(Meaning.INC) || cursor.is(Meaning.DEC);
        if (token.is(Meaning.DASH) && shaping && cursor.is(1, Meaning.FILLER) && !notes.stepAhead(1)) {
            cursor.at += 2;
            return;
        }
        int mark = token.value();
        boolean lonely = cursor.is(-2, Meaning.COMMA)
                && (cursor.is(Meaning.COMMA) || cursor.is(Meaning.OPEN) || cursor.is(Meaning.FINISH))
                && line.text.charAt(token.start()) == '~';
        if (lonely && !line.counted || illegible(token)) {
            line.hole(token.span());
            return;
        }
        if (sign(mark) && line.labelled && !line.counted) {
            line.doubt(token.span());
            return;
        }
        if (token.is(Meaning.MARK) && strange(mark) && !between(mark) && (depth > 0 || cut(mark) || stepsAhead())) {
            line.doubt(token.span());
        }
    }

    /** Marks in place of words ("/////", "???", "……", "(…)"): what is left out there may be a step. */
    private boolean illegible(Token first) {
        int begin = cursor.at - 1;
        boolean dots = first.is(Meaning.STOP);
        if (dots && longDots()) {
            return true;
        }
        boolean same = !line.counted
                && (dots
                        ? ellipsis(first)
                        : first.is(Meaning.SLASH)
                                || first.is(Meaning.MARK)
                                || first.is(Meaning.DASH)
                                        && (cursor.is(-2, Meaning.COMMA) || cursor.is(-2, Meaning.OPEN)));
        while (same && cursor.peek().value() == first.value() && !cursor.peek().spaced()) {
            cursor.next();
        }
        int run = cursor.at - begin;
        boolean asks = "?\u00bf".indexOf(first.value()) >= 0;
        boolean cut =
                first.is(Meaning.SLASH) && cursor.peek(begin - cursor.at - 1).is(Meaning.COMMA);
        if (!same || run < (asks || cut ? 2 : 3) && !dots) {
            cursor.at = begin + 1;
            return false;
        }
        return line.begun()
                && (cursor.is(Meaning.SHUT)
                                && cursor.peek(begin - cursor.at - 1).is(Meaning.OPEN)
                        || notes.stepAhead(0)
                        || cursor.peek().meaning().parts()
                        || cursor.is(Meaning.OPEN) && notes.aside() && !cursor.is(1, Meaning.NUMBER)
                        || !dots);
    }

    /** A long row of dots with others like it in the line: what stood there cannot be read. */
    private boolean longDots() {
        int end = 0;
        while (cursor.is(end, Meaning.STOP) && !cursor.peek(end).spaced()) {
            end++;
        }
        boolean again = false;
        for (int place = end; end >= LONG_DOTS && !again && !cursor.is(place, Meaning.FINISH); place++) {
            again = cursor.is(place, Meaning.STOP) && cursor.is(place + 1, Meaning.STOP);
        }
        cursor.at += again ? end : 0;
        return again && !line.counted;
    }

    private boolean ellipsis(Token first) {
        return line.text.charAt(first.start()) == '\u2026'
                || cursor.is(Meaning.STOP) && !cursor.peek().spaced() && cursor.is(1, Meaning.STOP);
    }

    /** Words that were passed over as a note hold a number: "in the arm pit and 2 more where it pulls". */
    void numbersIn(int begin) {
        for (int place = begin; place < cursor.at; place++) {
            boolean number =
                    cursor.is(place - cursor.at, Meaning.NUMBER) && cursor.is(place + 1 - cursor.at, Meaning.MORE);
            if (number && !line.counted) {
                line.doubt(cursor.since(begin));
                return;
            }
        }
    }

    /** Words that were passed over as a note say what is worked into: "the nose bump over 4 sts". */
    void placesIn(int begin) {
        for (int place = begin; place < cursor.at; place++) {
            int at = place - cursor.at;
            boolean stitches =
                    cursor.is(at, Meaning.IN) && cursor.is(at + 1, Meaning.NUMBER) && cursor.is(at + 2, Meaning.ST);
            if (stitches && !line.counted) {
                line.doubt(cursor.since(begin));
                return;
            }
        }
    }

    /** At the line's end: a word that wants another after it shows that the line breaks off, "*dc in next 2 sts, then". */
    void end() {
        Meaning last = cursor.peek(-1).meaning();
        boolean wants = switch (last) {
            case AND, OF, FROM, BETWEEN, TO -> true;
            case STAR -> cursor.is(-2, Meaning.FROM) && !line.begun();
            case NEXT -> cursor.is(-2, Meaning.THE) && items.alone();
            default -> false;
        };
        if (wants && !line.counted && line.worked) {
            line.hole(cursor.peek(-1).span());
        }
    }

    /** Over "the"; nothing but a hole comes after it where a comma does. */
    void article() {
        Token token = cursor.next();
        if (cursor.is(Meaning.COMMA)) {
            line.doubt(token.span());
        }
    }

    /** Over "them", which after a stitch says what it is worked into without saying it. */
    void pronoun() {
        Token token = cursor.next();
        if (cursor.peek(-2).meaning().makes()) {
            line.doubt(token.span());
        }
    }

    /** "turn the corner in the usual way": more than a turn of the work, and what it is, is not said. */
    void afterTurn() {
        int begin = cursor.at;
        while (cursor.is(Meaning.UNKNOWN)
                || cursor.is(Meaning.THE)
                || cursor.is(Meaning.SPACE)
                || cursor.is(Meaning.IN)) {
            cursor.next();
        }
        if (cursor.at > begin && cursor.peek().meaning().parts() && stepsAhead()) {
            line.doubt(cursor.since(begin));
        } else {
            cursor.at = begin;
        }
    }

    /** Words that are no part of any step. Among steps they make the line doubtful; at its end, or as a sentence, not. */
    void read() {
        int begin = cursor.at;
        boolean dash = cursor.is(-1, Meaning.DASH) && cursor.peek(-1).spaced();
        boolean sentence =
                depth == 0 && (begin == 0 || dash || cursor.is(-1, Meaning.STOP) || cursor.is(-1, Meaning.SEMICOLON));
        boolean counted = cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.UNKNOWN);
        boolean goesOn = cursor.is(-1, Meaning.AND) && !items.empty();
        boolean vague = cursor.is(Meaning.TO) && cursor.is(1, Meaning.UNKNOWN) && !line.counted && !items.empty();
        boolean howLong = cursor.is(Meaning.TO) && depth == 0 && items.fillsRound() && !cursor.is(1, Meaning.NUMBER);
        boolean figure = cursor.is(Meaning.NUMBER) && !line.counted && (cursor.is(-1, Meaning.WORK) || stepsAhead());
        cursor.next();
        while (!cursor.done()
                && !cursor.peek().meaning().parts()
                && !cursor.is(Meaning.SHUT)
                && !cursor.is(Meaning.OPEN)
                && !cursor.is(Meaning.STAR)
                && !notes.stepAhead(0)
                && !(cursor.is(Meaning.NUMBER) && new CountEnds(cursor).closes())) {
            cursor.next();
        }
        if (howLong && (cursor.done() || cursor.peek().meaning().parts() || cursor.is(Meaning.OPEN))) {
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return;
        }
        boolean item = item(begin);
        boolean among = figure
                || numberedItem(begin)
                || vague
                || item && cursor.is(1, Meaning.REPEAT)
                || counted && !line.counted
                || goesOn
                || !items.parted && !items.empty()
                || !cursor.peek().meaning().parts() && notes.stepAhead(0)
                || !sentence && (depth > 0 || stepsAhead() || listedBeforeCount());
        if (among && (told(begin) || item)) {
            line.hole(cursor.since(begin));
        } else if (among) {
            line.doubt(cursor.since(begin));
        }
        items.addApart(new Note(cursor.since(begin), Feature.OTHER));
    }

    /** Whether the words have a number and stand between commas before the count: "2 dc, purl 1, 2 dc (5)". */
    private boolean numberedItem(int begin) {
        boolean number = false;
        for (int place = begin - cursor.at; place < 0; place++) {
            number |= cursor.is(place, Meaning.NUMBER);
        }
        return number
                && line.worked
                && !line.counted
                && cursor.is(begin - cursor.at - 1, Meaning.COMMA)
                && cursor.is(Meaning.COMMA);
    }

    /** Whether the words say what to do as an item of the list of steps: "10 dc, do the special thing, dec". */
    private boolean told(int begin) {
        int verb = begin - cursor.at - (cursor.is(begin - cursor.at - 1, Meaning.THE) ? 2 : 1);
        return cursor.is(verb, Meaning.WORK)
                && cursor.is(verb - 1, Meaning.COMMA)
                && cursor.is(Meaning.COMMA)
                && line.worked
                && !line.counted;
    }

    /** Whether one word that nobody knows stands as an item among steps that are repeated: "(dc, flumpet) x 6". */
    private boolean item(int begin) {
        Meaning before = cursor.peek(begin - cursor.at - 1).meaning();
        boolean begins = before == Meaning.COMMA || before == Meaning.OPEN || before == Meaning.STAR;
        boolean ends = cursor.is(Meaning.COMMA) || cursor.is(Meaning.SHUT) || cursor.is(Meaning.STAR);
        return begins && ends && cursor.at == begin + 1 && cursor.is(-1, Meaning.UNKNOWN) && !line.counted;
    }

    /** Whether the words stand as an item of the list of steps, with the count still to come: "3 sc, wrap (9)". */
    private boolean listedBeforeCount() {
        if (line.counted || !line.worked || !cursor.is(Meaning.OPEN)) {
            return false;
        }
        return cursor.is(1, Meaning.NUMBER) || cursor.is(1, Meaning.EQUALS);
    }

    /** Words after the count that have no step in them: "(12), which is twice as many"; or that say the steps again: "This means: …". */
    boolean remark(Token token) {
        if (depth == 0 && line.counted && line.worked && (explains() || comment(token))) {
            int begin = cursor.at;
            while (!cursor.done()) {
                cursor.next();
            }
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return true;
        }
        boolean words = switch (token.meaning()) {
            case UNKNOWN, SAME, AS, YOUHAVE, THE, EACH, FILLER, NUMBER, LAST, FIRST, NEXT, PREVIOUS, ST, IT, OTHER ->
                true;
            case INC, DEC, INVDEC, STITCH ->
                cursor.is(-1, Meaning.DASH) && cursor.peek(-1).spaced();
            default -> false;
        };
        if (!words
                || depth > 0
                || !line.counted
                || !line.worked
                || !items.parted && !cursor.is(-1, Meaning.SHUT)
                || numberedStepsAhead()
                || notes.stepAhead(0) && !cursor.is(-1, Meaning.DASH)) {
            return false;
        }
        items.addApart(notes.read(Feature.OTHER));
        return true;
    }

    /** Words before a place that begins a round: nobody knows what they say when they are not of the trade. */
    void before(int place) {
        int strange = 0;
        for (int i = line.body; i < place; i++) {
            strange += cursor.is(i - cursor.at, Meaning.UNKNOWN) ? 1 : 0;
        }
        if (strange > 1 && line.labelled) {
            line.doubt(cursor.since(line.body));
        }
    }

    /** Whether "means", "this means" stands at the cursor. */
    private boolean explains() {
        int verb = cursor.is(Meaning.THE) || cursor.is(Meaning.IT) ? 1 : 0;
        Token means = cursor.peek(verb);
        return means.is(Meaning.UNKNOWN)
                && means.value() == Lexicon.IS
                && Fold.of(line.text.charAt(means.start())) == 'm';
    }

    /** Whether the rest of the line is a remark behind two slashes. */
    private boolean comment(Token token) {
        return token.is(Meaning.SLASH)
                && cursor.is(1, Meaning.SLASH)
                && !cursor.peek(1).spaced();
    }

    private boolean numberedStepsAhead() {
        for (int ahead = 0; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            if (cursor.is(ahead, Meaning.NUMBER)
                    && cursor.peek(ahead + 1).meaning().makes()) {
                return true;
            }
        }
        return false;
    }

    /** Whether any step is still to come in the line. */
    boolean stepsAhead() {
        for (int ahead = 0; !cursor.is(ahead, Meaning.FINISH); ahead++) {
            switch (cursor.peek(ahead).meaning()) {
                case STITCH -> {
                    if (!joinedTo(ahead - 1) && !countsAtEnd(ahead)) {
                        return true;
                    }
                }
                case SPECIAL, INC, DEC, INVDEC -> {
                    return true;
                }
                case NOTE, JOIN, OPEN -> {
                    return false;
                }
                default -> {}
            }
        }
        return false;
    }

    /** Whether the stitch is what a number counts that stands as a last sentence: ". 18 sc". */
    private boolean countsAtEnd(int stitch) {
        int after = cursor.is(stitch + 1, Meaning.STOP) ? stitch + 2 : stitch + 1;
        return cursor.is(stitch - 1, Meaning.NUMBER)
                && cursor.is(stitch - 2, Meaning.STOP)
                && cursor.is(after, Meaning.FINISH);
    }

    /** Whether the mark is a drawn shape, with which charts and some writers mean stitches; not one of the dots of lists. */
    private static boolean sign(int mark) {
        boolean shape = mark >= '\u25a0' && mark <= '\u25ff' || mark >= '\u2300' && mark <= '\u23ff';
        return shape && "\u25cf\u25aa\u25cb\u25b6\u25ba".indexOf(mark) < 0 || mark == '\u25cb';
    }

    /** Whether the mark alone parts two steps, as a comma would. */
    private boolean between(int mark) {
        boolean alone =
                !cursor.peek(-2).meaning().parts() && !cursor.peek().meaning().parts();
        return alone && !items.empty() && "\u2022\u00b7~>\u2013\u00bb\u2219\u25cf\u25aa".indexOf(mark) >= 0;
    }

    private boolean joinedTo(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case FIRST, START, ORDINAL, TOP -> true;
            default -> false;
        };
    }

    private static boolean strange(int mark) {
        return "|\"#'^`".indexOf(mark) < 0;
    }

    /** Whether the mark shows that something is left out, wherever it stands before the count. */
    private boolean cut(int mark) {
        return "?\u00bf\u2026@%\u00a7_".indexOf(mark) >= 0 && line.worked && !line.counted && !cursor.is(Meaning.OPEN);
    }
}
