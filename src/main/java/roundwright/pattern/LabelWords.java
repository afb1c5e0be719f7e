package roundwright.pattern;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Vocabulary;

/** Finds the writer's own word for a round: one that many lines begin with, before or after numbers that run on ("T1 :", "2. kör:"). */
final class LabelWords {
    private static final int ENOUGH = 3;

    /** Numbers that do not run on, as those of sizes or photos, are fewer than half of those that do. */
    private static final int AGAINST = 2;

    private static final String UP_TO =
            "(?:[.\u00b0\u00aa\u00ba]?\\s*(?:-|\u2013|\u2014|~|\u301c|to|a|\u00e0|al|bis|do|t/m|\u0434\u043e)\\s*\\D{0,3}(\\d{1,3}))?";
    private static final Pattern BEFORE = Pattern.compile(
            "[^\\p{L}\\d]*(\\p{L}{1,12}?)s?[. \u00ba]{0,2}(\\d{1,3})" + UP_TO, Pattern.CASE_INSENSITIVE);
    private static final Pattern AFTER = Pattern.compile(
            "[^\\p{L}\\d]*(\\d{1,3})" + UP_TO + "[.\u00b0\u00aa\u00ba]?\\s?(\\p{L}{2,12})\\b[.]?\\s*[:.)=\u2013-]",
            Pattern.CASE_INSENSITIVE);

    /** How far the numbers beside a word run on. */
    private static final class Run {
        private int last;
        private int on;
        private int against;

        void see(int first, String upTo) {
            boolean next = first == last + 1;
            on += next ? 1 : 0;
            against += next || first == 1 ? 0 : 1;
            last = upTo == null ? first : Math.max(first, Integer.parseInt(upTo));
        }
    }

    private final Map<String, Run> runs = new HashMap<>();

    void see(String text) {
        Matcher before = BEFORE.matcher(text);
        Matcher after = AFTER.matcher(text);
        if (before.lookingAt()) {
            run(before.group(1)).see(Integer.parseInt(before.group(2)), before.group(3));
        } else if (after.lookingAt()) {
            run(after.group(3)).see(Integer.parseInt(after.group(1)), after.group(2));
        }
    }

    private Run run(String word) {
        return runs.computeIfAbsent(word.toLowerCase(Locale.ROOT), key -> new Run());
    }

    /** Takes the words that were found into the vocabulary. */
    void define(Vocabulary vocabulary) {
        runs.forEach((word, run) -> {
            boolean runsOn = run.on >= ENOUGH && run.on > AGAINST * run.against;
            if (runsOn && Vocabulary.mayLabel(word)) {
                vocabulary.defineLabel(word);
            }
        });
    }
}
