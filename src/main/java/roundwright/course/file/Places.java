package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Span;

/** The lines of a text: turns offsets into lines and columns, both from 1, and back. Line ends are LF, CRLF or CR. */
public final class Places {
    private final String text;
    private final List<Integer> starts = new ArrayList<>();

    private Places(String text) {
        this.text = text;
        starts.add(0);
        for (int index = 0; index < text.length(); index++) {
            char here = text.charAt(index);
            boolean pair = here == '\r' && index + 1 < text.length() && text.charAt(index + 1) == '\n';
            if ((here == '\n' || here == '\r') && !pair) {
                starts.add(index + 1);
            }
        }
    }

    public static Places of(String text) {
        return new Places(text);
    }

    public int lines() {
        return starts.size();
    }

    /** The line of an offset, from 1. */
    public int line(int offset) {
        int found = java.util.Collections.binarySearch(starts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** The column of an offset, from 1, in UTF-16 units; a byte order mark is not counted. */
    public int column(int offset) {
        int start = starts.get(line(offset) - 1);
        boolean mark = start == 0 && text.startsWith(CourseDocument.BYTE_ORDER_MARK);
        return Math.max(1, offset - start + (mark ? 0 : 1));
    }

    /** The stretch of a line without its line end. */
    public Span of(int line) {
        int start = starts.get(line - 1);
        int end = endWithSeparator(line);
        while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return new Span(start, end);
    }

    /** Every line that a stretch touches, whole, with the line end of the last. */
    public Span wholeLines(Span span) {
        int last = span.length() == 0 ? span.start() : span.end() - 1;
        return new Span(starts.get(line(span.start()) - 1), endWithSeparator(line(last)));
    }

    private int endWithSeparator(int line) {
        return line < starts.size() ? starts.get(line) : text.length();
    }
}
