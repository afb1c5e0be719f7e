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
        String all = text.toString();
        int at = 0;
        while (at < all.length()) {
            int end = endOfLine(all, at);
            cutter.line(all.substring(at, end), at);
            at = end + (all.startsWith("\r\n", end) ? 2 : 1);
        }
        cutter.close("");
        return cutter.parts;
    }

    private static int endOfLine(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
            i++;
        }
        return i;
    }

    private void line(String line, int at) {
        boolean heading = line.startsWith("#") && !line.matches("#+\\s?\\d.*");
        if (heading || line.isBlank()) {
            close(heading ? line.replaceFirst("^#+\\s*", "").strip() : "");
        } else {
            lines.add(new SourceLine(line, at));
        }
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
