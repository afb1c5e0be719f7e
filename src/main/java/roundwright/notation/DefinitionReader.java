package roundwright.notation;

import java.util.regex.Pattern;

/** Reads definitions of words: a name, a mark of equality or a colon, and what the name stands for. */
final class DefinitionReader {
    private static final Pattern CLOSED = Pattern.compile(
            "(?i)\\blast loop|(draw|drawn|pull|pulled|yarn|hook) (it )?through|through all|counts as (1|one|a) st|to close|closed together");

    private static final int LONGEST_NAME = 6;

    private final Cursor cursor;
    private final String text;
    private final Vocabulary vocabulary;
    /** Where the definitions begin. */
    private final int start;

    DefinitionReader(Cursor cursor, String text, Vocabulary vocabulary) {
        this.cursor = cursor;
        this.text = text;
        this.vocabulary = vocabulary;
        this.start = cursor.at;
    }

    /** How many things the line defines; its words are then in the vocabulary. */
    int read() {
        int found = 0;
        while (!cursor.done()) {
            int begin = cursor.at;
            if (!name()) {
                if (found == 0 || !overClause()) {
                    return found;
                }
                continue;
            }
            int nameEnd = cursor.at;
            cursor.next();
            int meant = cursor.at;
            overMeaning(meant);
            define(begin, nameEnd, meant, endOfName(meant, cursor.at));
            found++;
            while (!cursor.done() && (cursor.peek().meaning().parts() || cursor.is(Meaning.AND)) && !picture()) {
                cursor.next();
            }
        }
        return found;
    }

    /** Over what defines nothing, to the next clause; false where there is none. */
    private boolean overClause() {
        while (!cursor.done()
                && !cursor.is(Meaning.SEMICOLON)
                && !cursor.is(Meaning.COMMA)
                && !cursor.is(Meaning.MARK)) {
            cursor.next();
        }
        cursor.skip(Meaning.SEMICOLON, Meaning.COMMA, Meaning.MARK);
        return !cursor.done();
    }

    /** Moves to the mark after a name; false where no name and mark begin here. */
    private boolean name() {
        boolean own = false;
        boolean stitch = false;
        boolean unknown = false;
        for (int words = 0; words < LONGEST_NAME; words++) {
            Token token = cursor.peek();
            if (words > 0 && mark(words, own || stitch, unknown)) {
                return true;
            }
            unknown |= token.is(Meaning.UNKNOWN);
            if (words > 0 && token.is(Meaning.STOP) && cursor.is(1, Meaning.EQUALS)) {
                cursor.next();
                return true;
            }
            switch (token.meaning()) {
                case EQUALS -> {
                    return false;
                }
                case COLON -> {
                    if (!own || stitch || !cursor.is(-1, Meaning.ST)) {
                        return words > 0 && stitch && !cursor.is(-1, Meaning.NUMBER);
                    }
                }
                case UNKNOWN, TIMES, THE, INC, DEC, INVDEC, TOG, MEASURE, SHUT -> own = true;
                case SPECIAL -> stitch = true;
                case MARK -> own |= words == 0 && picture();
                case STITCH, SLIP, CHAIN, SKIP, HOLD, SPACE, ST, OPEN, START, WORK ->
                    own |= cursor.is(1, Meaning.EQUALS) || words == 0 && otherwise();
                default -> {
                    boolean number = token.is(Meaning.NUMBER) && words == 0;
                    if (number || token.is(Meaning.FINISH) || token.meaning().ends()) {
                        return false;
                    }
                    own |= words == 0 && cursor.is(1, Meaning.EQUALS);
                }
            }
            cursor.next();
        }
        return false;
    }

    /** "sp: single crochet": whether a word for a space is given to a stitch. */
    private boolean otherwise() {
        return cursor.is(Meaning.SPACE)
                && cursor.is(1, Meaning.COLON)
                && cursor.peek(2).meaning().makes();
    }

    /** Whether a sign that is no mark of writing stands before an equals sign, as the name of a step. */
    private boolean picture() {
        return cursor.is(Meaning.MARK) && cursor.peek().value() > 0x7f && cursor.is(1, Meaning.EQUALS);
    }

    /** Whether a mark, or a word for one, stands at the cursor and parts a name of so many words from its meaning. */
    private boolean mark(int words, boolean named, boolean unknown) {
        return switch (cursor.peek().meaning()) {
            case DASH -> {
                boolean ofPattern = unknown && words == 1 && stepAlone();
                yield words < 4
                        && (abbreviation(words) || ofPattern)
                        && cursor.peek().spaced();
            }
            case EQUALS -> named && !count();
            case COLON -> {
                boolean kept = cursor.peek(-1).meaning().makes();
                boolean listed = words == 1
                        && (cursor.at > words ? (named || kept) && stepAfter() : named && unknown && listed());
                boolean letter =
                        words == 1 && cursor.peek(-1).end() - cursor.peek(-1).start() == 1;
                yield listed
                        || letter && stepAlone()
                        || words < 4 && abbreviation(words)
                        || unknown && cursor.is(-1, Meaning.SHUT);
            }
            case UNKNOWN -> cursor.peek().value() == Lexicon.IS && words < 3 && named && stepAfter();
            default -> false;
        };
    }

    /** "x is dc", "v means two dc in one stitch": whether the verb is followed by what is worked. */
    private boolean stepAfter() {
        int place = cursor.is(1, Meaning.THE) || cursor.is(1, Meaning.WORK) ? 2 : 1;
        place += cursor.is(place, Meaning.NUMBER) ? 1 : 0;
        place += cursor.is(place, Meaning.UNKNOWN) && cursor.peek(place).value() != Lexicon.IS ? 1 : 0;
        return cursor.peek(place).meaning().makes() || cursor.is(place, Meaning.MAGIC);
    }

    /** "pb: single crochet, aum: increase": whether another name and its colon come after one step. */
    private boolean listed() {
        return cursor.peek(1).meaning().makes()
                && cursor.peek(2).meaning().parts()
                && cursor.is(3, Meaning.UNKNOWN)
                && cursor.is(4, Meaning.COLON);
    }

    /** "pj - single crochet;": whether one step and nothing more stands after the mark. */
    private boolean stepAlone() {
        boolean ends = cursor.peek(2).meaning().parts() || cursor.is(2, Meaning.FINISH);
        return cursor.peek(1).meaning().makes() && ends;
    }

    /** Whether nothing but a number of stitches comes after the mark: "3 rounds of sc = 18". */
    private boolean count() {
        int unit = cursor.is(2, Meaning.ST) || cursor.is(2, Meaning.STITCH) ? 3 : 2;
        return cursor.is(1, Meaning.NUMBER) && cursor.is(unit, Meaning.FINISH);
    }

    /** Whether the words before the cursor are the name of a step alone: "dc", "sc2tog". */
    private boolean abbreviation(int words) {
        Meaning first = cursor.peek(-words).meaning();
        boolean described = words == 2 && first == Meaning.FILLER && cursor.is(-1, Meaning.STITCH);
        boolean name = first.makes() || first == Meaning.INVDEC;
        boolean joined = words == 1 || cursor.is(-1, Meaning.TOG);
        return (name && joined || described) && cursor.at == start + words;
    }

    /** Over what the name stands for: to the next definition or the line's end. */
    private void overMeaning(int meant) {
        while (!cursor.done()) {
            boolean next = cursor.peek().meaning().parts() && equalsWithin(4);
            boolean numbered = cursor.is(-1, Meaning.NUMBER) && !cursor.is(-2, Meaning.IN);
            if (next || cursor.is(1, Meaning.EQUALS) && cursor.at > meant && !numbered) {
                return;
            }
            cursor.next();
        }
    }

    /** Where a meaning ends that is a name alone, such as that of a yarn: "B = rust. All dc." */
    private int endOfName(int from, int to) {
        int back = cursor.at;
        int end = to;
        cursor.at = from;
        if (cursor.is(Meaning.COLOUR) || cursor.is(Meaning.UNKNOWN)) {
            cursor.skip(Meaning.COLOUR, Meaning.UNKNOWN);
            end = cursor.peek().meaning().ends() ? Math.min(to, cursor.at) : to;
        }
        cursor.at = back;
        return end;
    }

    private boolean equalsWithin(int words) {
        for (int ahead = 1; ahead <= words; ahead++) {
            boolean is = cursor.is(ahead, Meaning.UNKNOWN) && cursor.peek(ahead).value() == Lexicon.IS;
            boolean mark = cursor.is(ahead, Meaning.COLON)
                    || cursor.is(ahead, Meaning.DASH) && cursor.peek(ahead).spaced();
            if (cursor.is(ahead, Meaning.EQUALS) || is || mark && ahead == 2) {
                return true;
            }
            boolean shortened = cursor.is(ahead, Meaning.STOP) && cursor.is(ahead + 1, Meaning.EQUALS);
            if (cursor.peek(ahead).meaning().parts() && !shortened) {
                return false;
            }
        }
        return false;
    }

    private void define(int begin, int nameEnd, int from, int to) {
        Lexicon.Entry entry = meant(from, to);
        if (entry == null) {
            return;
        }
        for (int i = begin; i < nameEnd; i++) {
            cursor.at = i;
            Token token = cursor.peek();
            boolean letter =
                    token.end() - token.start() == 1 && !token.meaning().parts();
            boolean whole = nameEnd == begin + 1 && !token.meaning().makes() && !token.is(Meaning.NUMBER);
            boolean free = whole
                    || Kept.word(text, token.start(), token.end()) != null
                    || token.is(Meaning.UNKNOWN)
                    || letter && !token.is(Meaning.OPEN) && !token.is(Meaning.SHUT);
            boolean step = entry.meaning() == Meaning.STITCH
                    || entry.meaning() == Meaning.INC
                    || entry.meaning() == Meaning.DEC;
            boolean other = (step || nameEnd == begin + 1)
                    && token.end() - token.start() <= 2
                    && (token.is(Meaning.SPACE) || token.is(Meaning.ST) || token.is(Meaning.MEASURE));
            boolean shaping =
                    nameEnd == begin + 1 && token.is(Meaning.STITCH) && entry.meaning() != Meaning.STITCH && step;
            if (free || other || shaping || token.is(Meaning.SPECIAL)) {
                vocabulary.define(text.substring(token.start(), token.end()).toLowerCase(java.util.Locale.ROOT), entry);
            }
        }
        cursor.at = to;
    }

    /** What the words from {@code from} to {@code to} say a step is; null where they are not understood. */
    private Lexicon.Entry meant(int from, int to) {
        if (alone(from, to)) {
            return same(afterArticle(from));
        }
        Token stitch = null;
        boolean together = false;
        boolean oneStitch = false;
        boolean drawn = false;
        int stitches = 0;
        int largest = 0;
        for (int i = from; i < to; i++) {
            cursor.at = i;
            Token token = cursor.peek();
            int before =
                    i > from && cursor.is(-1, Meaning.NUMBER) ? cursor.peek(-1).value() : 1;
            switch (token.meaning()) {
                case INC, DEC, INVDEC -> {
                    if (stitch == null || !cursor.peek(-1).meaning().parts()) {
                        cursor.at = to;
                        return same(i);
                    }
                }
                case STITCH, SPECIAL -> {
                    stitch = stitch == null ? token : stitch;
                    stitches += i > from && inStitch(-1) ? 0 : before;
                    largest = Math.max(largest, before);
                }
                case TOG -> together = true;
                case SAME, NEXT, NUMBER -> oneStitch |= inStitch(0);
                case SPACE -> drawn = true;
                default -> {}
            }
        }
        cursor.at = to;
        if (stitch != null && closedToOne(from, to)) {
            return new Lexicon.Entry(Meaning.SPECIAL, 0, StitchName.BOBBLE, Hold.BOTH, null);
        }
        return entry(stitch, together, oneStitch, drawn, stitches, largest);
    }

    /** Whether the word so many tokens on says that all goes into one stitch: "same", "next dc", "1 st". */
    private boolean inStitch(int ahead) {
        Token word = cursor.peek(ahead);
        Meaning after = cursor.peek(ahead + 1).meaning();
        return switch (word.meaning()) {
            case SAME -> true;
            case NEXT -> after == Meaning.ST || after == Meaning.STITCH;
            case NUMBER ->
                ahead == 0
                        && word.value() == 1
                        && (after == Meaning.ST
                                || after == Meaning.SPACE
                                || cursor.is(-1, Meaning.IN) && (after.parts() || cursor.is(2, Meaning.EQUALS)));
            default -> false;
        };
    }

    /** The place after "the", "my"; the same place where no such word stands there. */
    private int afterArticle(int place) {
        return cursor.is(place - cursor.at, Meaning.THE) ? place + 1 : place;
    }

    private Lexicon.Entry same(int place) {
        Token word = cursor.peek(place - cursor.at);
        return new Lexicon.Entry(word.meaning(), word.value(), word.name(), word.hold(), word.feature());
    }

    /** Whether the meaning is one word of the trade that is no stitch to be worked: "am = magic ring", "m = my stitches". */
    private boolean alone(int from, int to) {
        int first = afterArticle(from);
        cursor.at = first;
        int last = 1;
        while (first + last < to && cursor.is(last, Meaning.FILLER)) {
            last++;
        }
        boolean known = switch (cursor.peek().meaning()) {
            case CHAIN, SLIP, SKIP, MAGIC, ROUND, ST, HOLD, TOEND, CHAINSPACE, MARKER, TURN, REPEAT -> true;
            default -> false;
        };
        boolean ends = first + last >= to || cursor.peek(last).meaning().parts() || cursor.is(last, Meaning.OPEN);
        cursor.at = to;
        return known && ends;
    }

    /** Whether what is worked is drawn together into one stitch: a bobble, a cluster, a popcorn. */
    private boolean closedToOne(int from, int to) {
        cursor.at = 0;
        int start = cursor.peek(from).start();
        int end = to > from ? cursor.peek(to - 1).end() : start;
        cursor.at = to;
        return CLOSED.matcher(text.substring(start, Math.max(start, end))).find();
    }

    private static Lexicon.Entry entry(
            Token stitch, boolean together, boolean oneStitch, boolean drawn, int stitches, int largest) {
        if (stitch == null) {
            return drawn ? new Lexicon.Entry(Meaning.SPECIAL, 0, StitchName.OTHER, Hold.BOTH, null) : null;
        }
        if (together) {
            return oneStitch
                    ? new Lexicon.Entry(Meaning.SPECIAL, 0, StitchName.BOBBLE, Hold.BOTH, null)
                    : new Lexicon.Entry(Meaning.DEC, Math.max(2, largest), stitch.name(), Hold.BOTH, null);
        }
        if (oneStitch && stitches > 1) {
            return new Lexicon.Entry(Meaning.INC, stitches, stitch.name(), Hold.BOTH, null);
        }
        return new Lexicon.Entry(stitch.meaning(), 0, stitch.name(), stitch.hold(), null);
    }
}
