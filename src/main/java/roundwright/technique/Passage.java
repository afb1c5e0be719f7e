package roundwright.technique;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;

/**
 * A sentence of the catalogue that can be said in either terms and to either hand.
 *
 * <p>{@code "Hold the hook in your {right} hand"} is said with "left" to a left-handed student; {@code {double-crochet}} is "double crochet" in
 * UK terms and "single crochet" in US terms; {@code {yarn over}}, {@code {miss}}, {@code {colour}} and {@code {tension}} are the terms' own words.
 *
 * @param template the sentence with its places in braces
 */
public record Passage(String template) {
    private static final Pattern PLACE = Pattern.compile("\\{([^{}]+)}");
    private static final Map<String, String> OTHER_SIDE =
            Map.of("right", "left", "left", "right", "clockwise", "anticlockwise", "anticlockwise", "clockwise");

    /** In UK and in US terms. */
    private static final Map<String, String[]> WORDS = Map.of(
            "yarn over", new String[] {"yarn round hook", "yarn over"},
            "miss", new String[] {"miss", "skip"},
            "colour", new String[] {"colour", "color"},
            "tension", new String[] {"tension", "gauge"});

    /** The sentence as a student reads it. */
    public String in(Terms terms, boolean leftHanded) {
        Matcher place = PLACE.matcher(template);
        String said = place.replaceAll(match -> Matcher.quoteReplacement(word(match.group(1), terms, leftHanded)));
        return said.isEmpty() ? said : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }

    private static String word(String place, Terms terms, boolean leftHanded) {
        if (OTHER_SIDE.containsKey(place)) {
            String side = leftHanded ? OTHER_SIDE.get(place) : place;
            return terms == Terms.US ? side.replace("anticlockwise", "counterclockwise") : side;
        }
        if (WORDS.containsKey(place)) {
            return WORDS.get(place)[terms == Terms.UK ? 0 : 1];
        }
        return Stitch.valueOf(place.toUpperCase(Locale.ROOT).replace('-', '_')).name(terms);
    }
}
