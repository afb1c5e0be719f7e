package roundwright.mistakes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Check;

/**
 * What probably lies behind one report.
 *
 * @param report the report
 * @param written the count that the pattern says, where it says one
 * @param shapes whether the round has an increase or a decrease
 * @param soFar what this report and the student's earlier ones say
 * @param after what all of the student's reports say
 */
public record Explanation(CountReport report, OptionalInt written, boolean shapes, Finding soFar, Finding after) {

    /** How the count stands; an answer without a count stands as right. */
    public State state() {
        if (!soFar.explained()) {
            return State.CANNOT_EXPLAIN;
        }
        boolean off = report.count().isPresent()
                && written.isPresent()
                && report.count().getAsInt() != written.getAsInt();
        return off ? State.OFF : State.RIGHT;
    }

    /** The check that is expected to tell most, where one can tell anything that is not known yet. */
    public Optional<Question> question() {
        List<Check> asked = report.checks().keySet().stream()
                .flatMap(word -> Check.of(word).stream())
                .toList();
        return Question.best(soFar, shapes, asked);
    }
}
