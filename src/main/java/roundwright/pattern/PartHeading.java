package roundwright.pattern;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.notation.Node;
import roundwright.notation.WrittenLine;
import roundwright.wording.Beginning;

/**
 * The heading of a part in a pasted pattern: "BODY (grey)", "## Wing - make 2", "The left ear:".
 *
 * @param name the part's name
 * @param after what stands behind the name: "make 2", "grey"; may be empty
 * @param marked whether it begins with the mark of a heading
 */
record PartHeading(String name, String after, boolean marked) {
    private static final int LONGEST = 60;
    private static final int MOST_WORDS = 8;
    private static final int LONGEST_NAME = 40;

    private static final Pattern EDGES = Pattern.compile("^[\\s#*_=~>|•·+-]+|[\\s#*_=~|:;,-]+$");
    private static final Pattern MARK = Pattern.compile("^\\s*(?:#{1,6}\\s|\\*\\*|__|==|--).*");

    /** The name, and what stands behind it in brackets, after a dash, a comma or a colon. */
    private static final Pattern PIECES =
            Pattern.compile("([^(\\[{:,–—]+?)\\s*(?:[(\\[{:,–—]|\\s-\\s|\\s(?=(?i:make|x)\\s*\\d|\\d+\\s*x\\b))(.*)");

    private static final Pattern HOW_MANY =
            Pattern.compile("(?i)\\W*(?:(?:make|work|crochet)\\s+(?:\\d+|one|two|three|four|five|six|eight)"
                    + "|(?:\\d+|one|two|three|four|six)\\s+(?:times|pieces?|of these)|x\\s*\\d+|\\d+\\s*x)\\b.{0,30}");

    /** Lines of few words that head no part: what is needed, how it is written, and what the hands are to do. */
    private static final Pattern OTHER =
            Pattern.compile("(?i)(?:materials?|supplies|you(?: will)? need|what you need|tools?"
                    + "|abbreviations?|gauge|tension|notes?|tips?|instructions?|directions?|pattern|stitch(?:es)?|size|level|skill"
                    + "|terms|yarn|hook|finished|difficulty|by|designed|copyright|©|www|http|page|step|rounds?|rnds?|rows?|method"
                    + "|assembly|finishing|making up|to make up|colou?rs?|main colou?r"
                    + "|magic|adjustable|sliding|mr|mc|form|make an?\\b"
                    + "|with|using|use|change|switch|place|put|cut|make sure|repeat|begin|start|continue|work|do|now|for|you|we"
                    + "|insert|turn|close|fasten|stuff|sew|weave|join|attach|leave|pull|fold|finish|break|don.t|do not|then|next|see"
                    + "|add|move|mark|count|in|this|it|remember|optional)\\b.*");

    /** A heading may name a colour, or a part that is called like something to do: "Tail", "Eyes", "Ring". */
    private static final Set<Feature> MAY_NAME = EnumSet.of(
            Feature.OTHER,
            Feature.MAGIC_RING,
            Feature.COLOUR_CHANGE,
            Feature.LEAVE_TAIL,
            Feature.EYES,
            Feature.MARKER,
            Feature.EMBROIDER);

    static Optional<PartHeading> of(WrittenLine line) {
        if (line.label().isPresent()
                || line.stitches() && !namesARing(line)
                || !MAY_NAME.containsAll(line.features())) {
            return Optional.empty();
        }
        String bare = EDGES.matcher(line.text()).replaceAll("");
        boolean marked = MARK.matcher(line.text()).matches();
        boolean fits = bare.length() <= LONGEST
                && bare.split("\\s+").length <= MOST_WORDS
                && bare.codePoints().anyMatch(Character::isLetter)
                && !bare.matches(".*[.!?…]$|\\d+(?!\\d*(?:st|nd|rd|th)\\b).*|.*\\|.*")
                && !OTHER.matcher(bare).matches();
        return fits ? Optional.of(cut(bare, marked)) : Optional.empty();
    }

    /** A ring and nothing worked into it: a part may be one. */
    private static boolean namesARing(WrittenLine line) {
        return line.features().contains(Feature.MAGIC_RING)
                && line.body().stream().allMatch(Node.Note.class::isInstance);
    }

    private static PartHeading cut(String bare, boolean marked) {
        Matcher pieces = PIECES.matcher(bare);
        String name = pieces.matches() ? pieces.group(1) : bare;
        String after = pieces.matches() ? pieces.group(2) : "";
        String tidy = EDGES.matcher(after.replaceAll("[)\\]}]+\\s*$", "")).replaceAll("");
        return new PartHeading(name(name), tidy, marked);
    }

    private static String name(String written) {
        String name = EDGES.matcher(written).replaceAll("").replaceAll("\\s+", " ");
        boolean shouted = name.equals(name.toUpperCase(Locale.ROOT)) && name.length() > 2;
        String calm = shouted ? name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT) : name;
        return Beginning.of(calm, LONGEST_NAME).strip();
    }

    /** "Make two", which stands below a heading and is none. */
    boolean onlyHowMany() {
        return name.isEmpty() || HOW_MANY.matcher(name).matches();
    }

    /** What stands behind the name, as a line of the part. */
    Optional<SourceLine> rest(SourceLine heading) {
        return after.isBlank() ? Optional.empty() : Optional.of(new SourceLine(after, heading.at()));
    }
}
