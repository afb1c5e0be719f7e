package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Span;

/**
 * A text as it is meant, with the place of every character of it in the file: lines that run on are joined by a space, and
 * a backslash before a mark is left out, as CommonMark says.
 *
 * <p>{@code "dc in each\n  st"} at 40 is {@code "dc in each st"} with pieces for 40 to 50 and 53 to 55.
 *
 * @param text what is meant
 * @param at where it begins in the file, with the backslash of an escaped first mark; where the text is empty, the place it would have
 * @param pieces stretches that stand in the file as they stand here, in order
 */
public record Written(String text, int at, List<Piece> pieces) {
    /** {@code length} characters, at {@code here} in the meant text and at {@code there} in the file. */
    public record Piece(int here, int there, int length) {}

    private static final String MARKS = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

    public Written {
        pieces = List.copyOf(pieces);
    }

    /** What the stretches of a file's lines say together, each trimmed. */
    static Written of(String file, List<Span> lines) {
        StringBuilder text = new StringBuilder();
        List<Piece> pieces = new ArrayList<>();
        int at = lines.isEmpty() ? 0 : lines.get(0).end();
        for (Span line : lines) {
            Span trimmed = trimmed(file, line);
            if (trimmed.length() > 0) {
                if (text.length() > 0) {
                    text.append(' ');
                } else {
                    at = trimmed.start();
                }
                add(file, trimmed, text, pieces);
            }
        }
        return new Written(text.toString(), at, pieces);
    }

    private static void add(String file, Span line, StringBuilder text, List<Piece> pieces) {
        int from = line.start();
        for (int index = from; index < line.end(); index++) {
            boolean escapes =
                    file.charAt(index) == '\\' && index + 1 < line.end() && MARKS.indexOf(file.charAt(index + 1)) >= 0;
            if (escapes) {
                piece(file, from, index, text, pieces);
                from = index + 1;
                index++;
            }
        }
        piece(file, from, line.end(), text, pieces);
    }

    private static void piece(String file, int from, int to, StringBuilder text, List<Piece> pieces) {
        if (to > from) {
            pieces.add(new Piece(text.length(), from, to - from));
            text.append(file, from, to);
        }
    }

    static Span trimmed(String file, Span span) {
        int start = span.start();
        int end = span.end();
        while (start < end && blank(file.charAt(start))) {
            start++;
        }
        while (end > start && blank(file.charAt(end - 1))) {
            end--;
        }
        return new Span(start, end);
    }

    private static boolean blank(char here) {
        return Character.isWhitespace(here) || CourseDocument.BYTE_ORDER_MARK.indexOf(here) >= 0;
    }

    public boolean isBlank() {
        return text.isBlank();
    }

    /** The stretch of the file that the whole text stands in. */
    public Span span() {
        if (pieces.isEmpty()) {
            return new Span(at, at);
        }
        Piece last = pieces.get(pieces.size() - 1);
        return new Span(at, last.there() + last.length());
    }

    /** Where a stretch of the meant text stands in the file. */
    public Span place(Span here) {
        int start = place(here.start());
        int end = here.length() == 0 ? start : place(here.end() - 1) + 1;
        return new Span(start, Math.max(start, end));
    }

    private int place(int here) {
        if (pieces.isEmpty()) {
            return at;
        }
        Piece piece = pieces.get(pieceAt(here));
        return piece.there() + Math.max(0, Math.min(here - piece.here(), piece.length()));
    }

    /** The last piece that begins at or before a character; the first where none does. */
    private int pieceAt(int here) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (pieces.get(middle).here() <= here) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** A stretch of this text as a text of its own, trimmed, with its places. */
    public Written part(int from, int to) {
        Span trimmed = trimmed(text, new Span(from, to));
        List<Piece> inside = new ArrayList<>();
        for (int index = pieceAt(trimmed.start()); index < pieces.size(); index++) {
            Piece piece = pieces.get(index);
            if (piece.here() >= trimmed.end()) {
                break;
            }
            int start = Math.max(piece.here(), trimmed.start());
            int end = Math.min(piece.here() + piece.length(), trimmed.end());
            if (start < end) {
                inside.add(new Piece(start - trimmed.start(), piece.there() + start - piece.here(), end - start));
            }
        }
        return new Written(trimmed.of(text), place(trimmed.start()), inside);
    }

    /** What stands between commas and semicolons, each trimmed; what is blank is left out. */
    public List<Written> split() {
        List<Written> parts = new ArrayList<>();
        int from = 0;
        for (int to = 0; to <= text.length(); to++) {
            if (to == text.length() || text.charAt(to) == ',' || text.charAt(to) == ';') {
                Written part = part(from, to);
                if (!part.isBlank()) {
                    parts.add(part);
                }
                from = to + 1;
            }
        }
        return parts;
    }
}
