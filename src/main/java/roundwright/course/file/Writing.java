package roundwright.course.file;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/** How words are written into a document so that they are read as they are meant. */
final class Writing {
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?=\\p{Punct})");
    private static final Pattern FIRST_MARK = Pattern.compile("^([\\p{L}\\d]*)(\\p{Punct})");
    private static final Pattern LINE_END = Pattern.compile("\\r\\n|\\r|\\n");

    private Writing() {}

    /** One line of plain words: line ends and runs of blanks become one blank, and a backslash before a mark is written twice. */
    static String words(String meant) {
        String line = meant.strip().replaceAll("\\s*[\\r\\n\\u000B\\f\\u0085\\u2028\\u2029]+\\s*", " ");
        return ESCAPE.matcher(line).replaceAll("\\\\\\\\");
    }

    /** The same with its first mark taken out of the reach of CommonMark: {@code "1. 6 dc"} is written {@code 1\. 6 dc}. */
    static String guarded(String words) {
        Matcher mark = FIRST_MARK.matcher(words);
        return mark.find() ? mark.group(1) + "\\" + words.substring(mark.start(2)) : words;
    }

    /** The line end that a file uses: that of its first line. */
    static String lineEnd(String text) {
        Matcher first = LINE_END.matcher(text);
        return first.find() ? first.group() : "\n";
    }

    /** What stands before an entry on its line: blanks and bullet. */
    static String margin(String text, Places places, Entry entry) {
        int start = places.of(places.line(entry.span().start())).start();
        Span before = new Span(start, Math.max(start, entry.written().at()));
        String margin = before.of(text).replace(CourseDocument.BYTE_ORDER_MARK, "");
        return margin.isBlank() || margin.matches("\\s*[-+*]\\s+") ? margin : "- ";
    }

    /** Lines with the file's line ends. */
    static String lines(String text, List<String> lines) {
        String end = lineEnd(text);
        return String.join(end, lines) + end;
    }
}
