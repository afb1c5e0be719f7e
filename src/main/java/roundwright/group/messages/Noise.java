package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/** Stretches of a message whose numbers are no counts: dates, times, sizes, prices, addresses, a pattern line quoted. */
final class Noise {
    private static final String MONTH =
            "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|december)\\b\\.?";
    private static final String DAY = "\\d{1,2}(?:st|nd|rd|th)?";

    private static final List<Pattern> SHAPES = List.of(
            shape("https?://\\S+|www\\.\\S+|\\S+@\\S+\\.\\S+"),
            shape("(?:\\+|\\b0)\\d[\\d -]{7,}\\d"),
            shape("\\b\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}\\b"),
            shape("\\b" + DAY + "\\s+(?:of\\s+)?" + MONTH + "\\b(?:\\s+\\d{4})?"),
            shape("\\b" + MONTH + "\\s+" + DAY + "\\b(?![:=])"),
            shape("\\b(?:on|by|before|after|until|till|since|from)\\s+the\\s+" + DAY
                    + "\\b(?!\\s*(?:r|rd|rnd|round|row)\\b)"),
            shape("\\b\\d{1,2}(?:[:.]\\d{2})?\\s*(?:[ap]\\.?m\\b\\.?|o'?\\s?clock)"),
            shape(
                    "\\b(?:at|by|around|about|til|till|until|before|after|from|since|its|it's|past|to)\\s+\\d{1,2}[:.]\\d{2}\\b"),
            shape("(?<![a-z\\d])(?:[01]\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d)?\\b"),
            shape(
                    "\\b(?:half|quarter)\\s+(?:past\\s+|to\\s+)?(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\\b"),
            shape(
                    "[£$€]\\s?\\d+(?:[.,]\\d+)?|\\b\\d+(?:[.,]\\d+)?\\s?(?:£|€|quid|pounds?|euros?|dollars?|pence|cents)"),
            shape(
                    "\\b\\d+(?:[.,]\\d+)?\\s?(?:mm|cm|km|kg|g|gr|grams?|grammes?|oz|ml|m|metres?|meters?|yds?|yards?|ft|inch(?:es)?|%|°|degrees?|ply)(?![a-z\\d])"),
            shape("\\b\\d+[.]\\d+\\b(?!\\s*[.=:)])"),
            shape("\\b(?:size|hook|needle)\\s*(?:no\\.?\\s*|is\\s+|a\\s+)?\\d+(?:[.,/]\\d+)?"),
            shape(
                    "\\([^()\\n]*\\b(?:inc|dec|dc|sc|tr|htr|hdc|st|sts|2tog|dc2tog|sc2tog)\\b[^()\\n]*\\)\\s*(?:x|\\*|×)?\\s*\\d*(?:\\s*times)?"),
            shape("\\b(?:inc|dec|dc|sc|tr|htr|hdc)\\s*(?:x|\\*|×)\\s*\\d+"),
            shape("\\b\\d+\\s?(?:dc|sc|htr|hdc|tr)\\s*,\\s*(?:inc|dec)"),
            shape("[x×*]\\s?\\d+\\b"));

    private Noise() {}

    private static Pattern shape(String expression) {
        return Pattern.compile(expression, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The stretches of a message to pass over, in no order. */
    static List<Span> in(String text, Span stretch) {
        List<Span> found = new ArrayList<>();
        for (Pattern shape : SHAPES) {
            Matcher matcher = shape.matcher(text).region(stretch.start(), stretch.end());
            while (matcher.find()) {
                found.add(new Span(matcher.start(), matcher.end()));
            }
        }
        return found;
    }

    private static final Set<String> UNITS_AFTER = Set.of(
            "h",
            "hr",
            "hrs",
            "hour",
            "hours",
            "min",
            "mins",
            "minute",
            "minutes",
            "sec",
            "secs",
            "second",
            "seconds",
            "day",
            "days",
            "week",
            "weeks",
            "month",
            "months",
            "year",
            "years",
            "yr",
            "yrs",
            "night",
            "nights",
            "evening",
            "evenings",
            "time",
            "times",
            "x",
            "session",
            "sessions",
            "lesson",
            "lessons",
            "people",
            "person",
            "kids",
            "children",
            "page",
            "pages",
            "ball",
            "balls",
            "skein",
            "skeins",
            "repeat",
            "repeats",
            "mm",
            "cm",
            "m",
            "g",
            "kg",
            "metres",
            "meters",
            "metre",
            "inch",
            "inches",
            "ply",
            "pm",
            "am",
            "oclock",
            "colour",
            "colours",
            "color",
            "colors",
            "of",
            "more",
            "inc",
            "incs",
            "increases",
            "dec",
            "decs",
            "decreases",
            "cups",
            "cup",
            "cats",
            "dogs",
            "grandchildren",
            "feet",
            "percent",
            "euros",
            "pounds",
            "quid",
            "dollars",
            "miles",
            "weekend",
            "weekends",
            "episodes",
            "episode",
            "part",
            "parts",
            "markers",
            "marker",
            "hooks",
            "hook",
            "photos",
            "photo",
            "pics",
            "pic",
            "things",
            "thing",
            "goes",
            "tries",
            "attempts",
            "women",
            "men",
            "girls",
            "boys",
            "ears",
            "arms",
            "legs",
            "eyes",
            "petals",
            "sides",
            "pattern",
            "patterns",
            "questions",
            "question",
            "th",
            "nd",
            "class",
            "classes",
            "minuits",
            "rows",
            "rounds",
            "rnds",
            "rds");

    private static final Set<String> WORDS_BEFORE = Set.of(
            "page",
            "pages",
            "lesson",
            "session",
            "week",
            "day",
            "video",
            "chapter",
            "step",
            "bus",
            "hook",
            "size",
            "age",
            "aged",
            "flat",
            "room",
            "platform",
            "tel",
            "phone",
            "call",
            "lane",
            "class",
            "version",
            "needle",
            "repeat",
            "repeats",
            "x",
            "minute",
            "line",
            "part",
            "tram",
            "train",
            "number",
            "no",
            "nr",
            "channel",
            "section",
            "photo",
            "picture",
            "figure",
            "fig",
            "turned",
            "house",
            "since",
            "bought",
            "spent",
            "cost",
            "costs",
            "level",
            "grade",
            "exercise",
            "question",
            "point",
            "option",
            "colour",
            "increase",
            "decrease",
            "repeated",
            "£",
            "$",
            "€",
            "@");

    /** Words ending in s that may follow a count without making it a number of things. */
    private static final Set<String> NOT_THINGS = Set.of(
            "this",
            "yes",
            "plus",
            "thanks",
            "always",
            "less",
            "across",
            "perhaps",
            "sometimes",
            "guess",
            "was",
            "is",
            "has",
            "its",
            "as",
            "us",
            "vs",
            "pls",
            "yess",
            "yesss",
            "stitches",
            "stiches",
            "minus",
            "besides",
            "towards",
            "does",
            "thats",
            "whats",
            "lets",
            "theres",
            "heres",
            "success",
            "afterwards",
            "unless",
            "counts",
            "says",
            "makes",
            "comes",
            "looks",
            "seems",
            "kiss",
            "bless",
            "goodness",
            "previous",
            "previously",
            "others",
            "yours",
            "ours",
            "hers",
            "his",
            "means",
            "gives",
            "needs",
            "keeps",
            "starts",
            "ends",
            "mistakes",
            "xs");

    /** Whether the word after a number says that it counts something other than stitches. */
    static boolean unitAfter(List<Token> tokens, int after) {
        if (after >= tokens.size() || !tokens.get(after).word()) {
            return false;
        }
        Token next = tokens.get(after);
        if (Cues.is(Cue.STITCHES, next.folded()) || next.capital() && !next.glued()) {
            return false;
        }
        boolean things =
                next.folded().length() >= 4 && next.folded().endsWith("s") && !NOT_THINGS.contains(next.folded());
        return UNITS_AFTER.contains(next.folded()) || things;
    }

    /** Whether the word before a number says that it is no count. */
    static boolean wordBefore(List<Token> tokens, int at) {
        return at > 0 && WORDS_BEFORE.contains(tokens.get(at - 1).folded());
    }
}
