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
    private static final int LONGEST = 32;

    /** Numbers that do not run on, as those of sizes or photos, are fewer than half of those that do. */
    private static final int AGAINST = 2;

    /** Made when a line comes that may have such a word. */
    private static final class Ways {
        private static final String UP_TO =
                "(?:[.\u00b0\u00aa\u00ba]?\\s*(?:-|\u2013|\u2014|~|\u301c|to|a|\u00e0|al|bis|do|t/m|\u0434\u043e)\\s*\\D{0,3}(\\d{1,3}))?";
        static final Pattern BEFORE = Pattern.compile(
                "[^\\p{L}\\d]*+(\\p{L}{1,12}?)s?[. \u00ba]{0,2}(\\d{1,3})" + UP_TO, Pattern.CASE_INSENSITIVE);
        static final Pattern AFTER = Pattern.compile(
                "[^\\p{L}\\d]*+(\\d{1,3})" + UP_TO + "[.\u00b0\u00aa\u00ba]?\\s?(\\p{L}{2,12})\\b[.]?\\s*[:.)=\u2013-]",
                Pattern.CASE_INSENSITIVE);
    }

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
        int begin = 0;
        while (begin < text.length() && !Character.isLetterOrDigit(text.charAt(begin))) {
            begin++;
        }
        if (begin == text.length()) {
            return;
        }
        boolean figure = Character.isDigit(text.charAt(begin));
        if (!(figure ? mayStandBehind(text, begin) : mayStandBefore(text, begin))) {
            return;
        }
        Matcher label = (figure ? Ways.AFTER : Ways.BEFORE).matcher(text);
        if (label.lookingAt()) {
            int word = figure ? 3 : 1;
            int number = figure ? 1 : 2;
            run(label.group(word)).see(Integer.parseInt(label.group(number)), label.group(figure ? 2 : 3));
        }
    }

    /** Whether letters from here stand before a number and are no word of the trade, which keeps its meaning whatever runs on. */
    private static boolean mayStandBefore(String text, int begin) {
        int end = begin;
        while (end < text.length() && end - begin < LONGEST && letter(text.charAt(end))) {
            end++;
        }
        int number = end;
        while (number < text.length() && number - end < 2 && ". \u00ba".indexOf(text.charAt(number)) >= 0) {
            number++;
        }
        if (number == text.length() || !Character.isDigit(text.charAt(number))) {
            return false;
        }
        boolean several = end - begin > 1 && Character.toLowerCase(text.charAt(end - 1)) == 's';
        return !Vocabulary.isOfTrade(text, begin, several ? end - 1 : end);
    }

    /** Whether a word, or a second number, may follow the number that stands here. */
    private static boolean mayStandBehind(String text, int begin) {
        int at = begin;
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
            at++;
        }
        at += at < text.length() && ".\u00b0\u00aa\u00ba".indexOf(text.charAt(at)) >= 0 ? 1 : 0;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() && (letter(text.charAt(at)) || "-\u2013\u2014~\u301c".indexOf(text.charAt(at)) >= 0);
    }

    private static boolean letter(char c) {
        return Character.isLetter(c) || Character.isSurrogate(c);
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
