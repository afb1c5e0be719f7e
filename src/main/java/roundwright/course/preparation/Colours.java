package roundwright.course.preparation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The colours that a course's yarn comes in, and which of them a line of the pattern takes up. */
final class Colours {
    private static final Pattern AMOUNT = Pattern.compile(
            "(?i)(?:about\\s+)?\\d+(?:[.,]\\d+)?\\s*(?:g|grams?|m|metres?|meters?|yards?|balls?|skeins?)\\s+(?:of\\s+)?");
    private static final String TAKES_UP =
            "(?i)\\b(?:with|in|to|into|join|use|using|take|attach)\\s+(?:the\\s+|a\\s+)?(?:\\w+\\s+)?";

    private final Map<String, Pattern> takingUp = new LinkedHashMap<>();

    /** Reads {@code aran, cotton, 50 g cream, 30 g red}: the colours are what stands behind an amount. */
    Colours(String yarn) {
        for (String piece : yarn.split("[,;]|\\band\\b")) {
            Matcher amount = AMOUNT.matcher(piece.strip());
            if (amount.lookingAt() && amount.end() < piece.strip().length()) {
                String name = piece.strip().substring(amount.end()).strip().toLowerCase(Locale.ROOT);
                takingUp.computeIfAbsent(name, Colours::takingUp);
            }
        }
    }

    private static Pattern takingUp(String name) {
        return Pattern.compile(TAKES_UP + Pattern.quote(name) + "\\b(?!\\s+\\p{L}+\\s+(?:on|to)\\b)");
    }

    List<String> names() {
        return List.copyOf(takingUp.keySet());
    }

    /** The colour that a line takes up last: "Change to red." takes up red, "Sew the red band on" nothing. */
    Optional<String> takenUp(String line) {
        int last = -1;
        Optional<String> found = Optional.empty();
        for (Map.Entry<String, Pattern> colour : takingUp.entrySet()) {
            Matcher matcher = colour.getValue().matcher(line);
            while (matcher.find()) {
                if (matcher.start() > last) {
                    last = matcher.start();
                    found = Optional.of(colour.getKey());
                }
            }
        }
        return found;
    }
}
