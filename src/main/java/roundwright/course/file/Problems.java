package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.wording.Wording;

/** Collects the problems of a file; the message of each is the room's sentence of its key. */
final class Problems {
    private static final Wording WORDS = Wording.of("course");

    /** More of them help nobody; the rest are counted in one last problem. */
    private static final int MOST = 1000;

    /** A longer line is not written out anew. */
    private static final int LONGEST_SUGGESTED = 2000;

    private final String text;
    private final Places places;
    private final List<FileProblem> found = new ArrayList<>();
    private int left;

    Problems(String text, Places places) {
        this.text = text;
        this.places = places;
    }

    void error(String key, Span at, Object... arguments) {
        add(Severity.ERROR, key, at, Optional.empty(), at, arguments);
    }

    void warning(String key, Span at, Object... arguments) {
        add(Severity.WARNING, key, at, Optional.empty(), at, arguments);
    }

    void remark(String key, Span at, Object... arguments) {
        add(Severity.REMARK, key, at, Optional.empty(), at, arguments);
    }

    /** A problem that can be mended by writing a few words in place of those at {@code at}. */
    void mendable(Severity severity, String key, Span at, Optional<String> instead, Object... arguments) {
        Span lines = new Span(
                places.of(places.line(at.start())).start(),
                places.of(places.line(at.end())).end());
        Optional<String> suggestion = lines.length() > LONGEST_SUGGESTED
                ? Optional.empty()
                : instead.map(words ->
                        text.substring(lines.start(), at.start()) + words + text.substring(at.end(), lines.end()));
        add(severity, key, at, suggestion, lines, arguments);
    }

    private void add(
            Severity severity, String key, Span at, Optional<String> instead, Span replaceable, Object... arguments) {
        if (found.size() >= MOST) {
            left++;
            return;
        }
        add(
                new Problem(
                        severity,
                        key,
                        at,
                        WORDS.say("problem." + key, arguments),
                        instead.stream().toList()),
                replaceable);
    }

    /** Sentences may begin with a technique's name, which is written small. */
    private static String sentence(String key, Object... arguments) {
        String said = WORDS.say("problem." + key, arguments);
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }

    /** A problem that another room found, its span already one of the file. */
    void add(Problem problem, Span replaceable) {
        if (found.size() >= MOST) {
            left++;
            return;
        }
        int start = problem.span().start();
        found.add(new FileProblem(places.line(start), places.column(start), problem, replaceable));
    }

    /** How many errors have been found so far. */
    long errors() {
        return found.stream().filter(FileProblem::isError).count();
    }

    List<FileProblem> inOrder() {
        List<FileProblem> sorted = new ArrayList<>(found);
        sorted.sort(FileProblem.IN_ORDER);
        if (left > 0) {
            Span end = new Span(text.length(), text.length());
            Problem more = new Problem(
                    Severity.REMARK, "more-problems", end, WORDS.say("problem.more-problems", left), List.of());
            sorted.add(new FileProblem(places.line(text.length()), places.column(text.length()), more, end));
        }
        return sorted;
    }
}
