package roundwright.course.file;

import roundwright.notation.Problem;
import roundwright.notation.Span;
import roundwright.wording.Wording;

/**
 * Draws a problem for a person: where it is, what is wrong, the line it is in with carets below, and what to write instead.
 *
 * <pre>
 * lantern.md:4:1: error: There is no setting called “tensoin”.
 *     - tensoin: 18 stitches and 20 rounds to 10 cm
 *       ^^^^^^^
 *     write: - tension: 18 stitches and 20 rounds to 10 cm
 * </pre>
 */
public final class ProblemPrinter {
    private static final Wording WORDS = Wording.of("course");
    private static final String INDENT = "    ";

    /** A longer line is shown from a little before the place. */
    private static final int WIDEST = 160;

    private static final int BEFORE = 40;

    private final String name;
    private final String text;
    private final Places places;

    /** Prints problems of one text, which messages call by the given name. */
    public ProblemPrinter(String name, String text) {
        this.name = name;
        this.text = text;
        this.places = Places.of(text);
    }

    /** The whole of it, in lines that end in LF. */
    public String print(Problem problem) {
        int line = places.line(problem.span().start());
        StringBuilder drawn = new StringBuilder(heading(problem)).append('\n');
        Span whole = places.of(line);
        if (whole.length() > 0) {
            draw(whole, problem.span(), drawn);
        }
        problem.suggestion()
                .ifPresent(instead -> drawn.append(INDENT)
                        .append(WORDS.say("write-instead", instead.replaceAll("\\R", "\n" + INDENT)))
                        .append('\n'));
        return drawn.toString();
    }

    /** The first line alone: {@code name:line:column: severity: message}. */
    public String heading(Problem problem) {
        int start = problem.span().start();
        String severity = WORDS.say("severity." + problem.severity().name().toLowerCase(java.util.Locale.ROOT));
        return name + ":" + places.line(start) + ":" + places.column(start) + ": " + severity + ": "
                + problem.message();
    }

    private void draw(Span line, Span problem, StringBuilder drawn) {
        int from = line.length() > WIDEST ? Math.max(line.start(), problem.start() - BEFORE) : line.start();
        int to = Math.min(line.end(), from + WIDEST);
        String shown = text.substring(from, to).replace(CourseDocument.BYTE_ORDER_MARK, "");
        int hidden = to - from - shown.length();
        int start = Math.max(0, problem.start() - from - hidden);
        int end = Math.min(shown.length(), problem.end() - from - hidden);
        String margin = shown.substring(0, Math.min(start, shown.length())).replaceAll("[^\t]", " ");
        drawn.append(INDENT).append(shown).append('\n');
        drawn.append(INDENT)
                .append(margin)
                .append("^".repeat(Math.max(1, end - start)))
                .append('\n');
    }
}
