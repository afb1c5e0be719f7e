package roundwright.course.file;

import java.util.Comparator;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.notation.Span;

/**
 * A problem at its place in a file.
 *
 * @param line from 1
 * @param column from 1, in UTF-16 units
 * @param problem its span is a stretch of the whole file
 * @param replaceable the stretch of the file that a suggestion takes the place of
 */
public record FileProblem(int line, int column, Problem problem, Span replaceable) {
    /** By place, and at one place the gravest first. */
    public static final Comparator<FileProblem> IN_ORDER = Comparator.comparingInt(
                    (FileProblem problem) -> problem.problem().span().start())
            .thenComparing(problem -> problem.problem().severity());

    public boolean isError() {
        return problem.severity() == Severity.ERROR;
    }
}
