package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;

/** Cuts a text into parts and lines: a blank line or a heading begins a part. */
final class BareLines {
    private final List<PartText> parts = new ArrayList<>();
    private List<SourceLine> lines = new ArrayList<>();
    private String name = "";

    private BareLines() {}

    static List<PartText> parts(CharSequence text) {
        BareLines cutter = new BareLines();
        for (Row row : rows(text)) {
            cutter.row(row);
        }
        cutter.close("");
        return cutter.parts;
    }

    private void row(Row row) {
        if (row.gap()) {
            close("");
        }
        String line = row.line().text();
        if (line.startsWith("#") && !line.matches("#+\\s?\\d.*")) {
            close(line.replaceFirst("^#+\\s*", "").strip());
        } else {
            lines.add(row.line());
        }
    }

    /** The lines of a text that are not blank. */
    static List<Row> rows(CharSequence text) {
        List<Row> rows = new ArrayList<>();
        String all = text.toString();
        boolean gap = true;
        int at = 0;
        while (at < all.length()) {
            int end = endOfLine(all, at);
            String line = all.substring(at, end);
            boolean blank = line.isBlank();
            if (!blank) {
                rows.add(new Row(new SourceLine(line, at), gap));
            }
            gap = blank;
            at = end + (all.startsWith("\r\n", end) ? 2 : 1);
        }
        return rows;
    }

    /**
     * A line that is not blank.
     *
     * @param gap whether a blank line, or the text's beginning, stands before it
     */
    record Row(SourceLine line, boolean gap) {}

    private static int endOfLine(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
            i++;
        }
        return i;
    }

    private void close(String nextName) {
        if (!lines.isEmpty()) {
            parts.add(new PartText(name.isEmpty() ? "Part " + (parts.size() + 1) : name, lines));
            lines = new ArrayList<>();
            name = "";
        }
        name = nextName.isEmpty() ? name : nextName;
    }
}
