package roundwright.notation;

import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A line that tells how the pattern is written instead of what to do: "Ch 1 at the start never counts as a stitch",
 * "MB = 5 tr tog in one stitch", "X = dc, V = increase".
 *
 * @param single whether it speaks of a single starting chain
 * @param startingChain the option of {@link Habit#STARTING_CHAIN} that it settles, where it does
 */
public record Statement(boolean tells, OptionalInt startingChain, boolean single) {
    /** How lists of what a pattern uses begin, with a colon. */
    private static final String TITLES =
            "abbr\\w*\\.?|abrev\\w*\\.?|abk\\p{L}*\\.?|leyenda|legenda|legend|key|terms|glossary|skills? (needed|required)|stitches( used)?|techniques( used)?|special stitch(es)?|materials|you (will )?need|hook|gauge|tension|size|finished size|measurements|yarn|notions|supplies|equipment";

    /** The same where no colon follows. */
    private static final String PLAIN_TITLES =
            "abbreviations|glossary|stitches used|materials|gauge|tension|measurements|finished size|supplies|notions";

    /** The first letters of those titles, for few lines begin with them. */
    private static final Set<String> BEGINNINGS = new HashSet<>();

    private static final int BEGINNING = 3;

    static {
        for (String title : (TITLES + "|" + PLAIN_TITLES).split("\\|")) {
            BEGINNINGS.add(title.substring(0, BEGINNING));
        }
    }

    private static final String ROUND = "rounds";
    private static final int LONGEST_NAME = 3;
    private static final int SHORT = 10;
    private static final Statement NOTHING = new Statement(false, OptionalInt.empty(), false);

    /** Made when the first line comes that may be one of them: most patterns have none. */
    private static final class Sentences {
        static final Pattern LIST = Pattern.compile(
                "\\W*+((" + TITLES + ")\\b[^0-9]{0,20}:|(" + PLAIN_TITLES + ")\\b)", Pattern.CASE_INSENSITIVE);

        /** "dc means double crochet". */
        static final Pattern MEANS = Pattern.compile(
                "\\W*+\\p{L}[\\p{L}0-9 ]{0,30} (means?|stands? for|is short for|refers to)\\b.*",
                Pattern.CASE_INSENSITIVE);

        /** "A number alone means that many dc". */
        static final Pattern NUMBERS = Pattern.compile(
                "(.{0,80}[/;.] )?\\W*+(an? |any |all |each |every |where )?((bare|plain|single|lone) )?(numbers?|figures?)(?! in\\b)( \\w+)?( alone| by (it|them)sel\\w+| on (its|their) own| only)?[^.]{0,30}?(\\bmeans?|=|\\bare|\\bis|stands?)[^.]*\\b(sc|dc|hdc|tr|crochets?|stitch(es)?)\\b.*",
                Pattern.CASE_INSENSITIVE);
    }

    /** Whether the line has anything that a statement needs; tells quickly of most that they are none. */
    public static boolean possible(String text) {
        if (beginsWithRound(text)) {
            return false;
        }
        return text.indexOf('=') >= 0
                || text.indexOf(':') > 0 && !Character.isDigit(text.charAt(text.indexOf(':') - 1))
                || text.indexOf(':') > 0 && text.indexOf(':') < SHORT
                || text.indexOf(" - ") > 0 && text.indexOf(" - ") < SHORT
                || text.indexOf(" \u2013 ") > 0 && text.indexOf(" \u2013 ") < SHORT
                || text.startsWith("(") && text.indexOf(") ") < SHORT
                || text.indexOf(" is ") > 0 && text.indexOf(" is ") < SHORT
                || text.indexOf(" - ") > text.indexOf("; ") && text.indexOf("; ") > 0
                || text.indexOf('-') > 0 && text.indexOf('-') < SHORT && Character.isLetter(text.charAt(0))
                || text.contains("count")
                || text.contains("COUNT")
                || text.contains("mean")
                || text.contains("umber")
                || text.contains("refers")
                || text.contains("stands")
                || lists(text);
    }

    /** Whether a round's label is the first thing in the line ("Rnd 3", "R3", "Round 3"): such a line states nothing. */
    private static boolean beginsWithRound(String text) {
        int i = 0;
        while (i < text.length() && i < ROUND.length() && Character.toLowerCase(text.charAt(i)) == ROUND.charAt(i)) {
            i++;
        }
        boolean initial = i == 1 && text.length() > 1;
        if (initial && (text.startsWith("nd", 1) || text.startsWith("ND", 1))) {
            i = text.length() > 3 && (text.charAt(3) == 's' || text.charAt(3) == 'S') ? 4 : 3;
        } else if (initial && (text.charAt(1) == 'd' || text.charAt(1) == 'D')) {
            i = 2;
        } else if (i != 1 && i < ROUND.length() - 1) {
            return false;
        }
        while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '.')) {
            i++;
        }
        return i > 0 && i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9';
    }

    /** Whether the line begins as lists of what a pattern uses do. */
    private static boolean lists(String text) {
        int begin = 0;
        while (begin < text.length() && !wordCharacter(text.charAt(begin))) {
            begin++;
        }
        int end = begin + BEGINNING;
        boolean perhaps = end <= text.length()
                && BEGINNINGS.contains(text.substring(begin, end).toLowerCase(Locale.ROOT));
        return perhaps && Sentences.LIST.matcher(text).lookingAt();
    }

    private static boolean wordCharacter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_';
    }

    private static boolean means(String text) {
        boolean perhaps = holds(text, "mean") || holds(text, "stand") || holds(text, "short") || holds(text, "refer");
        return perhaps && Sentences.MEANS.matcher(text).matches();
    }

    /** Whether the letters stand anywhere in the text, in small or capitals. */
    private static boolean holds(String text, String letters) {
        for (int i = 0; i + letters.length() <= text.length(); i++) {
            boolean begins = Character.toLowerCase(text.charAt(i)) == letters.charAt(0);
            if (begins && text.regionMatches(true, i, letters, 0, letters.length())) {
                return true;
            }
        }
        return false;
    }

    /** Reads the line as a statement, and takes the words that it defines into the vocabulary. */
    public static Statement read(ScannedLine line) {
        String text = line.text();
        Vocabulary vocabulary = line.vocabulary();
        if (text.length() > LineReader.LONGEST) {
            return NOTHING;
        }
        if ((holds(text, "number") || holds(text, "figure"))
                && Sentences.NUMBERS.matcher(text).matches()) {
            vocabulary.defineNumbersAreStitches();
            new DefinitionReader(new Cursor(line.tokens()), text, vocabulary).read();
            return new Statement(true, OptionalInt.empty(), false);
        }
        Cursor cursor = new Cursor(line.tokens());
        if (lists(text)) {
            listed(line);
            listed(line);
            return new Statement(true, OptionalInt.empty(), false);
        }
        if (new LabelReader(cursor).read().isPresent()) {
            return NOTHING;
        }
        boolean names = means(text) || names(cursor) || spelt(cursor);
        cursor.at = 0;
        OptionalInt chain = startingChain(cursor);
        boolean defines = new DefinitionReader(cursor, text, vocabulary).read() > 0;
        if (!defines) {
            overHeading(cursor);
            defines = cursor.at > 0 && new DefinitionReader(cursor, text, vocabulary).read() > 1;
        }
        if (!defines && overFirstSentence(cursor)) {
            defines = new DefinitionReader(cursor, text, vocabulary).read() > 0;
        }
        defines |= names && definesLater(line, cursor);
        if (defines && !vocabulary.isEmpty()) {
            new DefinitionReader(new Cursor(line.tokens()), text, vocabulary).read();
        }
        if (names) {
            return new Statement(true, OptionalInt.empty(), false);
        }
        return new Statement(defines || chain.isPresent(), chain, single(cursor));
    }

    /** Takes in what a list with a heading defines; asked for twice, for words may be told by others that the list defines later. */
    private static void listed(ScannedLine line) {
        Cursor cursor = new Cursor(line.tokens());
        overHeading(cursor);
        new DefinitionReader(cursor, line.text(), line.vocabulary()).read();
    }

    /** Whether a word is defined behind one of the line's marks: "MR: magic ring · sp: single crochet". */
    private static boolean definesLater(ScannedLine line, Cursor cursor) {
        boolean defines = false;
        for (int mark = 0; !defines && mark < cursor.size(); mark++) {
            cursor.at = mark;
            defines = cursor.next().meaning().parts()
                    && new DefinitionReader(cursor, line.text(), line.vocabulary()).read() > 0;
        }
        return defines;
    }

    private static void overHeading(Cursor cursor) {
        cursor.at = 0;
        while (!cursor.done() && !cursor.is(Meaning.COLON)) {
            cursor.next();
        }
        cursor.at = cursor.done() ? 0 : cursor.at + 1;
    }

    /** Moves past a first sentence without a step: "Translated by Ina; inc - 2 dc in one st"; false where there is none. */
    private static boolean overFirstSentence(Cursor cursor) {
        cursor.at = 0;
        boolean equals = cursor.has(Meaning.EQUALS);
        while (!cursor.done() && !cursor.is(Meaning.SEMICOLON) && !cursor.is(Meaning.STOP)) {
            boolean step = cursor.peek().meaning().makes() || cursor.is(Meaning.NUMBER) || cursor.is(Meaning.MAGIC);
            if (step && !equals) {
                return false;
            }
            cursor.next();
        }
        return !cursor.done() && cursor.next().meaning().ends();
    }

    /** Whether the line only says in other words what a short word means, with nothing to do: "MR = magic ring". */
    private static boolean names(Cursor cursor) {
        cursor.at = 0;
        int mark = 0;
        while (mark < LONGEST_NAME && !cursor.is(mark, Meaning.EQUALS) && !cursor.is(mark, Meaning.COLON)) {
            mark++;
        }
        boolean same =
                mark > 0 && mark < LONGEST_NAME && cursor.is(Meaning.MAGIC) && cursor.is(mark + 1, Meaning.MAGIC);
        for (int place = mark + 1; same && !cursor.is(place, Meaning.FINISH); place++) {
            same = !cursor.is(place, Meaning.NUMBER)
                    && !cursor.peek(place).meaning().makes();
        }
        return same;
    }

    /** Whether the line says short words in full, and gives nothing to do: "dc-double crochet inc-increase", "(dec) decrease 2 sts into 1". */
    private static boolean spelt(Cursor cursor) {
        cursor.at = 0;
        int pairs = 0;
        int numbers = 0;
        int opened = 0;
        for (int mark = 1; mark < cursor.size(); mark++) {
            boolean sign =
                    cursor.is(mark, Meaning.DASH) || cursor.is(mark, Meaning.EQUALS) || cursor.is(mark, Meaning.COLON);
            boolean parted = sign && inFull(cursor.peek(mark - 1), cursor.peek(mark + 1));
            boolean bracket = cursor.is(mark, Meaning.SHUT)
                    && cursor.is(mark - 2, Meaning.OPEN)
                    && inFull(cursor.peek(mark - 1), cursor.peek(mark + 1));
            pairs += parted || bracket ? 1 : 0;
            opened += bracket ? 1 : 0;
            numbers += cursor.is(mark, Meaning.NUMBER) ? 1 : 0;
        }
        return pairs > 1 && (numbers == 0 || opened > 1);
    }

    /** Whether a word and a longer one are two names of one thing, or a letter stands for what is named. */
    private static boolean inFull(Token name, Token meaning) {
        boolean known = name.meaning().makes() || name.is(Meaning.MAGIC) || name.is(Meaning.TOG);
        boolean longer = meaning.end() - meaning.start() > name.end() - name.start();
        boolean letter = (name.end() - name.start() == 1 || name.is(Meaning.UNKNOWN))
                && meaning.meaning().makes();
        boolean same =
                known && name.is(meaning.meaning()) && name.name() == meaning.name() && name.value() == meaning.value();
        return longer && (same || letter);
    }

    private static OptionalInt startingChain(Cursor cursor) {
        boolean chain = false;
        boolean counts = false;
        boolean not = false;
        cursor.at = 0;
        for (int i = 0; i < cursor.size(); i++) {
            Meaning meaning = cursor.peek(i).meaning();
            chain |= meaning == Meaning.CHAIN || meaning == Meaning.TCHAIN;
            boolean equals =
                    meaning == Meaning.EQUALS && (chain(cursor, i - 1) || chain(cursor, i - 2) || chain(cursor, i - 3));
            boolean neverCount = meaning == Meaning.YOUHAVE && cursor.is(i - 1, Meaning.NOT);
            counts |= meaning == Meaning.COUNTSAS || equals || neverCount;
            not |= meaning == Meaning.NOT;
            if (works(cursor, i) || i == 0 && meaning == Meaning.SPECIAL && cursor.is(1, Meaning.COLON)) {
                return OptionalInt.empty();
            }
        }
        return chain && counts ? OptionalInt.of(not ? 0 : 1) : OptionalInt.empty();
    }

    private static boolean chain(Cursor cursor, int i) {
        return i >= 0 && (cursor.is(i, Meaning.CHAIN) || cursor.is(i, Meaning.TCHAIN));
    }

    private static boolean single(Cursor cursor) {
        cursor.at = 0;
        for (int i = 0; i < cursor.size(); i++) {
            boolean one = cursor.is(i, Meaning.CHAIN)
                    && (number(cursor, i + 1)
                            || cursor.is(i + 1, Meaning.DASH) && number(cursor, i + 2)
                            || number(cursor, i - 1));
            if (one) {
                return true;
            }
        }
        return false;
    }

    private static boolean number(Cursor cursor, int i) {
        return cursor.is(i, Meaning.NUMBER) && cursor.peek(i).value() == 1;
    }

    /** Whether the token at {@code i} is part of a step that the line has one do. */
    private static boolean works(Cursor cursor, int i) {
        Meaning meaning = cursor.peek(i).meaning();
        Meaning after = cursor.peek(i + 1).meaning();
        return switch (meaning) {
            case NUMBER ->
                after == Meaning.STITCH && !cursor.is(i - 1, Meaning.COUNTSAS) && !cursor.is(i - 1, Meaning.EQUALS);
            case EACH -> after == Meaning.ST || after == Meaning.STITCH;
            case RING, MAGIC, INC, DEC, REPEAT, STAR, HOOK, NEXT -> true;
            default -> false;
        };
    }
}
