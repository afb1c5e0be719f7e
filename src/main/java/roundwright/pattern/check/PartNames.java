package roundwright.pattern.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.pattern.Part;

/** Finds the pattern's parts by their names in the words of a line: "Leg (make 2)" is meant by "the first leg" and by "both legs". */
final class PartNames {
    private static final int SHORTEST = 3;
    private static final int MOST = 100;
    private static final int LONGEST_TEXT = 600;

    /** So many stitches worked on a part. */
    record Use(Part part, int stitches, boolean around) {}

    private record Named(Part part, Pattern word, Pattern use) {}

    private final List<Named> all = new ArrayList<>();

    PartNames(roundwright.pattern.Pattern pattern) {
        Map<String, Part> byWord = new LinkedHashMap<>();
        List<Part> parts = pattern.parts();
        for (Part part : parts.subList(0, Math.min(MOST, parts.size()))) {
            byWord.putIfAbsent(word(part.name()), part);
        }
        byWord.forEach((word, part) -> {
            if (word.length() >= SHORTEST && !word.equals("part")) {
                all.add(named(part, Pattern.quote(word)));
            }
        });
    }

    private static Named named(Part part, String word) {
        String ordinal = "(?:first|second|third|fourth|1st|2nd|3rd|4th|left|right|other|next|same)";
        String stitches = "(?:sts?|stitches|sc|dc|hdc|htr|tr)";
        return new Named(
                part,
                Pattern.compile("(?i)\\b" + word + "(s|es)?\\b"),
                Pattern.compile("(?i)\\b(\\d{1,4}) ?" + stitches
                        + "? ?((?:in|on|onto|around|round|across|along|over|of|into) )?(?:the )?" + ordinal + "? ?"
                        + word + "\\b(?! and\\b)"));
    }

    /** The bare word: no remark in brackets, no number of pieces, no plural. */
    private static String word(String name) {
        String bare = name.toLowerCase(Locale.ROOT)
                .replaceAll("[(\\[].*", "")
                .replaceAll("\\b(make|x|×)?\\s*\\d+\\b|\\bmake\\b|[,:;.–-]\\s*$", "")
                .strip();
        return bare.endsWith("s") && !bare.endsWith("ss") ? bare.substring(0, bare.length() - 1) : bare;
    }

    /** The parts that a text names, in the order of the pattern. */
    List<Part> in(String text) {
        return all.stream()
                .filter(named -> text.length() <= LONGEST_TEXT
                        && named.word().matcher(text).find())
                .map(Named::part)
                .toList();
    }

    /** The parts before this one that a text names. */
    List<Part> others(Part part, String text) {
        return in(text).stream().filter(other -> other != part).toList();
    }

    /** What a line says it works on other parts: "12 sc on the second leg". */
    List<Use> uses(Part part, String text) {
        List<Use> uses = new ArrayList<>();
        for (Named named : all) {
            boolean other = named.part() != part && text.length() <= LONGEST_TEXT;
            Matcher matcher = named.use().matcher(text);
            while (other && matcher.find()) {
                String where =
                        matcher.group(2) == null ? "" : matcher.group(2).strip().toLowerCase(Locale.ROOT);
                boolean around = where.equals("around") || where.equals("round");
                uses.add(new Use(named.part(), Integer.parseInt(matcher.group(1)), around));
            }
        }
        return uses.stream().distinct().toList();
    }
}
