package roundwright.course.file;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.course.file.Section.Form;
import roundwright.course.file.Section.Kind;
import roundwright.technique.DidYouMean;

/**
 * What a heading says its section is: {@code Part: Tower}, {@code Lesson 3: The wall}, {@code Technique: shell stitch}, or something else.
 *
 * @param title the name that is left
 */
record HeadingForm(Kind kind, Written title, OptionalInt number, Form form) {
    private static final Map<String, Kind> WORDS =
            Map.of("part", Kind.PART, "lesson", Kind.LESSON, "technique", Kind.TECHNIQUE);
    private static final Pattern FORM = Pattern.compile("^(\\p{L}+)\\s*(\\d{1,6})?\\s*([:：])?\\s*(.*)$");

    /** What stands before the first heading of a file. */
    static HeadingForm none(int at) {
        return new HeadingForm(Kind.OTHER, new Written("", at, List.of()), OptionalInt.empty(), Form.RIGHT);
    }

    static HeadingForm of(Written heading, int level, boolean named) {
        Matcher matcher = FORM.matcher(heading.text());
        if (matcher.matches() && looksRight(matcher)) {
            String word = matcher.group(1).toLowerCase(Locale.ROOT);
            String meant = WORDS.containsKey(word)
                    ? word
                    : DidYouMean.of(word, List.copyOf(WORDS.keySet())).orElse("");
            if (!meant.isEmpty()) {
                return known(WORDS.get(meant), heading, matcher, level, !word.equals(meant));
            }
        }
        Kind kind = level == 1 && !named ? Kind.COURSE : Kind.OTHER;
        return new HeadingForm(kind, heading, OptionalInt.empty(), Form.RIGHT);
    }

    /** A colon or a number tells a heading of ours from one that happens to begin with the word. */
    private static boolean looksRight(Matcher matcher) {
        boolean exact = WORDS.containsKey(matcher.group(1).toLowerCase(Locale.ROOT));
        boolean colon = matcher.group(3) != null;
        return colon || (exact && (matcher.group(2) != null || !matcher.group(4).isEmpty()));
    }

    private static HeadingForm known(Kind kind, Written heading, Matcher matcher, int level, boolean misspelt) {
        boolean numbered = kind == Kind.LESSON && matcher.group(2) != null;
        boolean numberIsName = kind != Kind.LESSON && matcher.group(2) != null;
        OptionalInt number = numbered ? OptionalInt.of(Integer.parseInt(matcher.group(2))) : OptionalInt.empty();
        Written title = heading.part(
                numberIsName ? matcher.start(2) : matcher.start(4),
                heading.text().length());
        return new HeadingForm(kind, title, number, form(kind, matcher, level, misspelt, numbered));
    }

    private static Form form(Kind kind, Matcher matcher, int level, boolean misspelt, boolean numbered) {
        if (misspelt) {
            return Form.MISSPELT;
        }
        if (kind == Kind.LESSON && !numbered) {
            return Form.NO_NUMBER;
        }
        boolean bareLesson = numbered && matcher.group(4).isEmpty();
        if (matcher.group(3) == null && !bareLesson) {
            return Form.NO_COLON;
        }
        return level == 2 ? Form.RIGHT : Form.WRONG_LEVEL;
    }
}
