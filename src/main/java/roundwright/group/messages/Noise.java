package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/** Stretches of a message whose numbers are no counts: dates, times, sizes, prices, addresses, a pattern line quoted. */
final class Noise {
    private static final String MONTH =
            "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|december)\\b\\.?";
    private static final String DAY = "\\d{1,2}(?:st|nd|rd|th)?";

    private static final String MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";

    /** No shape is without a digit or a word for a time. */
    private static final Pattern NUMBER = Pattern.compile("\\d|half|quarter|clock|http|www|@|tension|gauge");

    /** A postcode, the only shape that needs its capitals. */
    private static final Pattern POSTCODE = Pattern.compile("\\b[A-Z]{1,2}\\d{1,2}[A-Z]?\\s\\d[A-Z]{2}\\b");

    /**
     * What a stretch looks like in small letters.
     *
     * @param pieces every such stretch has one of them, so that a text without any need not be searched; none where there is nothing to go by
     */
    private record Sort(List<String> pieces, Pattern pattern) {
        boolean maybeIn(String text) {
            return pieces.isEmpty() || pieces.stream().anyMatch(text::contains);
        }
    }

    private static final List<Sort> SORTS = List.of(
            sort("http|www.|@", "https?://\\S{1,400}|www\\.\\S{1,400}|(?<!\\S)\\S{1,64}@\\S{1,100}\\.\\S{1,20}"),
            sort("+|0", "(?:\\+|\\b0)\\d[\\d -]{7,16}\\d"),
            sort(
                    "/|-|.",
                    "(?<![\\d/.-])(?:\\d{4}[/.-]\\d{1,2}[/.-]\\d{1,2}|\\d{1,2}[/.-]\\d{1,2}[/.-]\\d{4}|\\d{1,2}/\\d{1,2}/\\d{2})(?![/.-]?\\d)"),
            sort(MONTHS, "\\b" + DAY + "\\s{1,3}(?:of\\s{1,3})?" + MONTH + "\\b(?:\\s{1,3}\\d{4})?"),
            sort(MONTHS, "\\b" + MONTH + "\\s{1,3}" + DAY + "\\b(?![:=])"),
            sort(
                    "the",
                    "\\b(?:on|by|before|after|until|till|since|from)\\s{1,3}the\\s{1,3}" + DAY
                            + "\\b(?!\\s{0,3}(?:r|rd|rnd|round|row)\\b)"),
            sort("am|pm|a.m|p.m|clock", "\\b\\d{1,2}(?:[:.]\\d{2})?\\s{0,3}(?:[ap]\\.?m\\b\\.?|o'?\\s?clock)"),
            sort(
                    ":|.",
                    "\\b(?:the|at|by|around|about|til|till|until|before|after|from|since|its|it's|past|to)\\s{1,3}\\d{1,2}[:.]\\d{2}\\b"),
            sort(":", "(?<![a-z\\d])(?:[01]\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d)?\\b"),
            sort(
                    "half|quarter",
                    "\\b(?:half|quarter)\\s{1,3}(?:past\\s{1,3}|to\\s{1,3})?(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\\b"),
            sort(
                    "£|$|€|quid|pound|euro|dollar|pence|cents",
                    "[£$€]\\s?\\d{1,6}(?:[.,]\\d{1,6})?|\\b\\d{1,6}(?:[.,]\\d{1,6})?\\s?(?:£|€|quid|pounds?|euros?|dollars?|pence|cents)(?:\\s\\d{2}\\b)?"),
            sort(
                    "",
                    "\\b\\d{1,6}(?:[.,]\\d{1,6})?\\s?(?:mm|cm|km|kg|g|gr|grams?|grammes?|oz|ml|m|metres?|meters?|yds?|yards?|ft|inch(?:es)?|%|°|degrees?|ply)(?![a-z\\d])"),
            sort(
                    "/",
                    "\\b\\d{1,2}/\\d{1,2}\\s{1,3}(?:cotton|yarn|wool|thread)\\b|\\b(?:cotton|yarn|wool|thread)\\s{1,3}\\d{1,2}/\\d{1,2}\\b"),
            sort(
                    "road|street|lane|avenue|drive|close|crescent|terrace",
                    "\\b\\d{1,4}[a-z]?\\s{1,3}(?:\\w{1,20}\\s{1,3}){0,2}(?:road|street|lane|avenue|drive|close|crescent|terrace)\\b"),
            sort(".", "\\b\\d{1,6}[.]\\d{1,6}\\b(?!\\s{0,3}[.=:)])"),
            sort(
                    "size|hook|needle",
                    "\\b(?:size|hook|needle)\\s{0,3}(?:no\\.?\\s{0,3}|is\\s{1,3}|a\\s{1,3})?\\d{1,6}(?:[.,/]\\d{1,6})?"),
            sort(
                    "(",
                    "\\([^()\\n]{0,80}\\b(?:inc|dec|dc|sc|tr|htr|hdc|st|sts|2tog|dc2tog|sc2tog)\\b[^()\\n]{0,80}\\)\\s{0,3}(?:(?:x|\\*|×)\\s{0,3}\\d{1,6}|\\d*\\s{0,3}times)?(?:\\s{0,3}\\(\\d{1,6}\\))?"),
            sort("x|*|×", "\\b(?:inc|dec|dc|sc|tr|htr|hdc)\\s{0,3}(?:x|\\*|×)\\s{0,3}\\d{1,6}"),
            sort(",", "\\b\\d{1,6}\\s?(?:dc|sc|htr|hdc|tr)\\s{0,3},\\s{0,3}(?:inc|dec)"),
            sort(
                    "x|×|*",
                    "(?<!\\p{L})[x×]\\s?\\d{1,6}\\b|(?<=[)\\]\\w])\\*\\s?\\d{1,6}\\b|(?<=[)\\]\\w] )\\*\\s\\d{1,6}\\b"),
            sort("tension|gauge", "\\b(?:tension|gauge)\\b[^.\\n]{0,40}"));

    private Noise() {}

    private static Sort sort(String pieces, String expression) {
        return new Sort(pieces.isEmpty() ? List.of() : List.of(pieces.split("\\|")), Pattern.compile(expression));
    }

    /** The stretches of a message to pass over, in no order. */
    static List<Span> in(String text, Span stretch) {
        String written = stretch.of(text);
        String small = Folding.small(written);
        List<Span> found = new ArrayList<>();
        if (!NUMBER.matcher(small).find()) {
            return found;
        }
        for (Sort sort : SORTS) {
            if (sort.maybeIn(small)) {
                add(found, sort.pattern().matcher(small), stretch.start());
            }
        }
        add(found, POSTCODE.matcher(written), stretch.start());
        return found;
    }

    private static void add(List<Span> found, Matcher matcher, int offset) {
        while (matcher.find()) {
            found.add(new Span(offset + matcher.start(), offset + matcher.end()));
        }
    }

    /** Whether the word after a number says that it counts something other than stitches. */
    static boolean unitAfter(List<Token> tokens, int after) {
        if (after >= tokens.size() || !tokens.get(after).word()) {
            return false;
        }
        Token next = tokens.get(after);
        boolean another = next.is("second")
                && after + 1 < tokens.size()
                && tokens.get(after + 1).matches("time|go|try|attempt|round|count");
        boolean kiss = next.matches("x+")
                && (after + 1 >= tokens.size()
                        || !tokens.get(after + 1).word()
                                && !tokens.get(after + 1).number());
        if (another || kiss || Cues.is(Cue.STITCHES, next) || next.capital() && !next.glued()) {
            return false;
        }
        boolean things = next.folded().length() >= 4 && next.folded().endsWith("s") && !Cues.is(Cue.NO_THINGS, next);
        return Cues.is(Cue.UNIT, next) || things;
    }

    /** Whether the word before a number says that it is no count. */
    static boolean wordBefore(List<Token> tokens, int at) {
        return at > 0 && Cues.is(Cue.NO_COUNT_BEFORE, tokens.get(at - 1));
    }
}
