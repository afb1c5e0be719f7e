package roundwright.notation;

import java.util.ArrayList;
import java.util.List;

/** Cuts a line into words, numbers and marks, longest known phrase first. One pass; every token keeps its place. */
final class Scanner {
    private static final int MOST = 1_000_000_000;

    private static final int LETTERS_A_TOKEN = 2;

    private final String text;
    private final Vocabulary vocabulary;
    private final char[] folded;
    private final AroundFigures figures;
    private final PhraseGaps gaps;
    private final int length;
    private final List<Token> tokens;
    private int at;
    private boolean spaced = true;
    /** The mark that this line repeats from, where it is no asterisk ("rep from + around"). */
    private final char star;
    /** Whether words come with blanks between their letters. */
    private final boolean exploded;

    private Scanner(String text, Vocabulary vocabulary) {
        this.text = text;
        this.vocabulary = vocabulary;
        this.length = text.length();
        this.tokens = new ArrayList<>(length / LETTERS_A_TOKEN + 1);
        this.folded = Fold.of(text);
        this.figures = new AroundFigures(text, folded);
        this.gaps = new PhraseGaps(text, folded);
        unscore();
        Misprint.mend(folded, text, !vocabulary.isEmpty());
        this.star = repeatedFrom();
        this.exploded = Markup.explode(folded);
    }

    /** An underscore between words stands for a blank. */
    private void unscore() {
        if (text.indexOf('_') < 0) {
            return;
        }
        for (int i = 1; i + 1 < length; i++) {
            boolean between = word(folded[i - 1]) && word(folded[i + 1]);
            folded[i] = folded[i] == '_' && between ? ' ' : folded[i];
        }
    }

    private static boolean word(char c) {
        return letter(c) || digit(c);
    }

    private char repeatedFrom() {
        for (int i = 1; i + 4 < length; i++) {
            boolean from = folded[i] == 'r' && folded[i + 1] == 'o' && folded[i + 2] == 'm' && folded[i + 3] == ' ';
            if (from && "+#^~@%$!".indexOf(folded[i + 4]) >= 0) {
                return folded[i + 4];
            }
        }
        return '*';
    }

    static List<Token> scan(String text, Vocabulary vocabulary) {
        Scanner scanner = new Scanner(text, vocabulary);
        while (scanner.at < scanner.length) {
            scanner.next();
        }
        return scanner.tokens;
    }

    private void next() {
        char c = folded[at];
        if (c == ' ' || c == Fold.NOTHING) {
            spaced |= c == ' ';
            at++;
        } else if (letter(c)) {
            word();
        } else if (digit(c)) {
            number();
        } else if (c == '&' && entity() || c == '<' && tag()) {
            spaced = true;
        } else if (c == '\\' && at + 1 < length && "[](){}*_-.#".indexOf(folded[at + 1]) >= 0) {
            at++;
        } else {
            mark(c);
        }
    }

    /** Reads over a character that a page wrote as an entity ("&nbsp;", "&times;"). */
    private boolean entity() {
        Markup.Entity entity = Markup.entity(text, at);
        if (entity == null) {
            return false;
        }
        char c = Fold.of(entity.character());
        if (c == ' ') {
            at = entity.end();
        } else if (c == 'x') {
            add(Meaning.TIMES, 0, entity.end());
        } else {
            add(c == '&' ? Meaning.AND : plainMark(c), c, entity.end());
        }
        return true;
    }

    /** Reads over a tag of a page ("<br>", "</b>"). */
    private boolean tag() {
        int end = Markup.tag(text, at);
        at = Math.max(at, end);
        return end > 0;
    }

    static boolean letter(char c) {
        return c >= 'a' && c <= 'z' || c > 0x7f && Character.isLetter(c);
    }

    static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    private void add(Lexicon.Entry entry, int end) {
        int whole = whole(end);
        tokens.add(new Token(
                entry.meaning(), entry.value(), entry.name(), entry.hold(), entry.feature(), at, whole, spaced));
        at = whole;
        spaced = false;
    }

    private void add(Meaning meaning, int value, int end) {
        int whole = whole(end);
        tokens.add(Token.mark(meaning, value, at, whole, spaced));
        at = whole;
        spaced = false;
    }

    /** The end of a token, never between the halves of one letter or picture. */
    private int whole(int end) {
        return end < length && Character.isLowSurrogate(text.charAt(end)) ? end + 1 : end;
    }

    /** A word of the pattern's own at the cursor; null where there is none. */
    private Lexicon.Entry own(int end) {
        if (vocabulary.isEmpty() || end - at == 1 && !markAlone(end)) {
            return null;
        }
        Lexicon.Entry entry = vocabulary.get(new String(folded, at, end - at));
        boolean letter = entry != null && end - at == 1 && entry.meaning() == Meaning.ROUND;
        return letter && !labels(end) ? null : entry;
    }

    /** Whether a letter that names rounds stands before a number and begins the line or goes on from another round: "T5 à T9". */
    private boolean labels(int end) {
        int next = end;
        while (next < length && next - end < 2 && (folded[next] == ' ' || folded[next] == '.')) {
            next++;
        }
        Token before = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
        boolean place =
                before == null || !before.is(Meaning.NUMBER) && !before.is(Meaning.OPEN) && !before.is(Meaning.COMMA);
        return place && next < length && digit(folded[next]);
    }

    /** Whether a single letter stands as a mark, not as "times" or "a": nothing but a mark or a count comes after it. */
    private boolean markAlone(int end) {
        int next = end;
        while (next < length && folded[next] == ' ') {
            next++;
        }
        if (next >= length || ",;.)]}*=".indexOf(folded[next]) >= 0) {
            return !afterBracket();
        }
        boolean jammed = at > 0 && digit(folded[at - 1]);
        if (jammed && next > end && folded[next] == 'i' && next + 1 < length && folded[next + 1] == 'n') {
            return true;
        }
        boolean count = "([{".indexOf(folded[next]) >= 0 && (next > end || jammed && Vocabulary.countAt(text, next));
        boolean listed = next > end && letter(folded[next]) && endOfWord(next) == next + 1 && mark(next);
        boolean letters = letter(folded[next]) && folded[at] != 'x' && folded[at] != 'a' || listed;
        return (count || letters || digit(folded[next]) && folded[at] != 'x' || folded[next] == '-') && !afterBracket();
    }

    /** Whether the letter at a place is one of the pattern's own marks. */
    private boolean mark(int place) {
        return vocabulary.get(String.valueOf(folded[place])) != null;
    }

    /** Whether what stands before is a number after a bracket: "(…) 6x". */
    private boolean afterBracket() {
        int size = tokens.size();
        return size > 1
                && tokens.get(size - 1).is(Meaning.NUMBER)
                && tokens.get(size - 2).is(Meaning.SHUT)
                && tokens.stream().anyMatch(token -> token.is(Meaning.OPEN));
    }

    /** The longest known phrase from here; an unknown word otherwise. */
    private void word() {
        int ownEnd = endOfWord(at);
        Lexicon.Entry own = own(ownEnd);
        if (own != null) {
            add(own, ownEnd);
            return;
        }
        if (exploded && halves(ownEnd)) {
            return;
        }
        Lexicon words = Lexicon.WORDS;
        int place = Lexicon.ROOT;
        Lexicon.Entry best = null;
        int bestEnd = at;
        int i = at;
        while (place != Lexicon.NOWHERE && i < length) {
            char c = folded[i];
            if (c >= 'a' && c <= 'z') {
                place = words.after(place, c - 'a');
                i++;
            } else if (c == Fold.NOTHING) {
                i++;
                continue;
            } else {
                int phrase = words.after(place, Lexicon.GAP);
                i = phrase == Lexicon.NOWHERE ? i : gaps.after(i);
                place = i < 0 ? Lexicon.NOWHERE : phrase;
            }
            if (words.entry(place) != null && !goesOn(i)) {
                best = words.entry(place);
                bestEnd = i;
            }
        }
        int roman = afterRound() ? Roman.value(folded, at, ownEnd) : 0;
        if (roman > 0) {
            add(Meaning.NUMBER, roman, ownEnd);
        } else if (best == null) {
            unknown(ownEnd);
        } else if (!(best.meaning() == Meaning.MEASURE && ring(ownEnd)) && !compound(best, bestEnd)) {
            add(best, best.meaning() == Meaning.TOTAL ? overDotOfTotal(bestEnd) : overDot(bestEnd));
        }
    }

    /** A word cut in two by a blank, one half of it no word of its own. */
    private boolean halves(int end) {
        int next = end < length && folded[end] == ' ' ? end + 1 : end;
        int nextEnd = next > end ? endOfWord(next) : end;
        Lexicon.Entry joined = nextEnd > next && end - at <= 2 ? Spelling.joined(folded, at, end, next, nextEnd) : null;
        if (joined != null) {
            add(joined, nextEnd);
        }
        return joined != null;
    }

    /** "in a CM": what would be a measure, in capitals and with no number before it, is another language's word. */
    private boolean ring(int end) {
        boolean measured = !tokens.isEmpty() && tokens.get(tokens.size() - 1).is(Meaning.NUMBER);
        Lexicon.Entry other = measured ? null : Kept.capitals(text, at, end);
        if (other != null) {
            add(other, end);
        }
        return other != null;
    }

    /** A word that translators leave ("anillo mágico", "pb"), the longer first. */
    private boolean kept(int end, int nextEnd) {
        Lexicon.Entry two = nextEnd > end ? Kept.word(text, at, nextEnd) : null;
        int oneEnd = end < length && folded[end] == '/' && Kept.word(text, at, end + 1) != null ? end + 1 : end;
        Lexicon.Entry entry = two == null ? Kept.word(text, at, oneEnd) : two;
        if (entry != null) {
            add(entry, overDot(two == null ? oneEnd : nextEnd));
        }
        return entry != null;
    }

    /** A word that is in no list: another language's, with a letter slipped, or cut in two by a blank. */
    private void unknown(int end) {
        int next = end < length && folded[end] == ' ' ? end + 1 : end;
        int nextEnd = next > end ? endOfWord(next) : end;
        if (kept(end, nextEnd)) {
            return;
        }
        Lexicon.Entry joined = nextEnd > next ? Spelling.joined(folded, at, end, next, nextEnd) : null;
        if (joined != null) {
            add(joined, nextEnd);
        } else if (!together(end)) {
            add(Spelling.meant(folded, at, end), end);
        }
    }

    /** Words that were run together ("scinnextst"): cut where known words end, the longest first. */
    private boolean together(int end) {
        List<RunTogether.Cut> cuts = RunTogether.cuts(folded, at, end);
        for (RunTogether.Cut cut : cuts) {
            add(cut.word(), cut.end());
        }
        return !cuts.isEmpty();
    }

    private boolean afterRound() {
        return !tokens.isEmpty() && tokens.get(tokens.size() - 1).is(Meaning.ROUND);
    }

    /** Over the full stop of an abbreviation ("ea. st", "d.c. into"), which ends no sentence. */
    private int overDot(int end) {
        if (end + 2 < length && folded[end] == '(' && folded[end + 1] == 's' && folded[end + 2] == ')') {
            return end + 3;
        }
        if (end - at == 1 && folded[at] == 'w' && end < length && folded[end] == '/') {
            return end + 1;
        }
        boolean whole = end - at == 4 && folded[at] == 'n' && folded[at + 2] == 'x';
        boolean dotted = end < length && folded[end] == '.' && end - at <= 6 && !whole;
        int next = end + 1;
        while (dotted && next < length && folded[next] == ' ') {
            next++;
        }
        boolean chains = dotted && folded[at] == 'c' && end - at <= 3 && figures.howMany(next);
        boolean goesOn = chains
                || dotted
                        && next < length
                        && next - end < 4
                        && (text.charAt(next) >= 'a' && text.charAt(next) <= 'z' || ",;)]}".indexOf(folded[next]) >= 0);
        return goesOn ? end + 1 : end;
    }

    /** Over the full stop of "tot. 18". */
    private int overDotOfTotal(int end) {
        return end - at == 3 && end < length && folded[end] == '.' ? end + 1 : end;
    }

    /** "four" after "twenty-": both are one number. */
    private boolean compound(Lexicon.Entry entry, int end) {
        Token tens = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
        boolean joins = entry.meaning() == Meaning.NUMBER
                && entry.value() < 10
                && tens != null
                && (tens.is(Meaning.NUMBER) || tens.is(Meaning.DASH) && tokens.size() > 1 && !tens.spaced() && !spaced);
        int place = tens != null && tens.is(Meaning.DASH) ? tokens.size() - 2 : tokens.size() - 1;
        if (!joins || !inTens(tokens.get(place))) {
            return false;
        }
        Token first = tokens.get(place);
        tokens.subList(place, tokens.size()).clear();
        tokens.add(Token.mark(Meaning.NUMBER, first.value() + entry.value(), first.start(), end, first.spaced()));
        at = end;
        spaced = false;
        return true;
    }

    private boolean inTens(Token token) {
        return token.is(Meaning.NUMBER)
                && token.value() >= 20
                && token.value() <= 90
                && token.value() % 10 == 0
                && letter(folded[token.start()]);
    }

    private boolean goesOn(int i) {
        int next = i;
        while (next < length && folded[next] == Fold.NOTHING) {
            next++;
        }
        return next < length && letter(folded[next]);
    }

    private int endOfWord(int from) {
        int i = from;
        while (i < length && (letter(folded[i]) || folded[i] == '\'' || folded[i] == Fold.NOTHING)) {
            i++;
        }
        return i;
    }

    private void number() {
        long value = 0;
        int i = at;
        while (i < length && (digit(folded[i]) || folded[i] == Fold.NOTHING)) {
            if (digit(folded[i])) {
                value = Math.min(MOST, value * 10 + (folded[i] - '0'));
            }
            i++;
        }
        boolean fraction = i + 1 < length && (folded[i] == '.' || folded[i] == ',') && digit(folded[i + 1]);
        if (fraction && figures.measured(i + 1, folded[i] == '.')) {
            add(Meaning.MEASURE, 0, figures.afterDigits(i + 1));
            return;
        }
        if (clock(i)) {
            add(Meaning.MEASURE, 0, i + 3);
            return;
        }
        int ordinal = ordinalByDot(i) ? i + 1 : figures.ordinal(value, i);
        add(ordinal > i ? Meaning.ORDINAL : Meaning.NUMBER, (int) value, ordinal);
    }

    /** "every 2. st", "every 3. and 4. st": a full stop that makes the number before it an ordinal. */
    private boolean ordinalByDot(int i) {
        int last = tokens.size() - 1;
        boolean each = last >= 0 && tokens.get(last).is(Meaning.EACH);
        boolean and = last > 0
                && tokens.get(last).is(Meaning.AND)
                && tokens.get(last - 1).is(Meaning.ORDINAL);
        return (each || and) && i + 1 < length && folded[i] == '.' && folded[i + 1] == ' ';
    }

    /** Whether a colon and two figures at {@code i} make the number a time: "at 4:35". */
    private boolean clock(int i) {
        Token before = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
        return before != null && (before.is(Meaning.AT) || before.is(Meaning.FROM)) && figures.clock(i);
    }

    private void mark(char c) {
        Lexicon.Entry own = c < 0x80 || vocabulary.isEmpty() ? null : vocabulary.get(text.substring(at, whole(at + 1)));
        if (own != null) {
            add(own, at + 1);
            return;
        }
        switch (c == star ? '*' : c) {
            case '*' -> {
                boolean two = at + 1 < length && folded[at + 1] == c;
                add(two ? Meaning.STARS : Meaning.STAR, 0, two ? at + 2 : at + 1);
            }
            case '-', '=' -> {
                if (c == '-' && figures.beforeTimes(at)) {
                    at++;
                    return;
                }
                boolean arrow = at + 1 < length && folded[at + 1] == '>';
                add(arrow ? Meaning.EQUALS : plainMark(c), c == '-' ? text.charAt(at) : c, arrow ? at + 2 : at + 1);
            }
            case '\u2192', '\u21d2', '\u27a1', '\u279c' -> add(Meaning.EQUALS, c, at + 1);
            case '.' -> dots(c);
            case '(', '[', '{', '<' -> add(Meaning.OPEN, c, at + 1);
            case ')', ']', '}', '>' -> add(Meaning.SHUT, c, at + 1);
            case '&', '+' -> add(Meaning.AND, c, at + 1);
            default -> add(plainMark(c), Character.isHighSurrogate(c) ? text.codePointAt(at) : c, at + 1);
        }
    }

    /** A full stop; several between figures span a range ("Rnd 3..6"). */
    private void dots(char c) {
        int end = at + 1;
        boolean figures = at > 0 && digit(folded[at - 1]);
        while (figures && end < length && folded[end] == '.') {
            end++;
        }
        boolean several = figures && (end > at + 1 || text.charAt(at) == '\u2026');
        boolean spans = several && end < length && digit(folded[end]);
        add(spans ? Meaning.DASH : Meaning.STOP, spans ? '-' : c, spans ? end : at + 1);
    }

    private static Meaning plainMark(char c) {
        return switch (c) {
            case ',' -> Meaning.COMMA;
            case '.', '!' -> Meaning.STOP;
            case ';' -> Meaning.SEMICOLON;
            case ':' -> Meaning.COLON;
            case '-' -> Meaning.DASH;
            case '/', '\\' -> Meaning.SLASH;
            case '=' -> Meaning.EQUALS;
            default -> Meaning.MARK;
        };
    }
}
