package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.notation.Habit;
import roundwright.notation.Node;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Span;
import roundwright.notation.WrittenLine;

/** Finds the words of a line that were read by the trade's usage alone: the sums bear another reading just as well. */
final class Assumptions {
    /** Numbers of repeats, which may be in all or after the first. */
    private static final Set<Habit> REPEATS = Set.of(Habit.REPEAT_FROM, Habit.REPEAT_LIST);

    private Assumptions() {}

    /** Whether the line leaves open anything that is looked for; tells quickly of most that they do not. */
    static boolean possible(WrittenLine line) {
        return line.open().stream().anyMatch(REPEATS::contains);
    }

    /**
     * Reports what was assumed.
     *
     * @param ways every reading of the line, the chosen one first
     * @param decisions what decided each habit of the line
     */
    static void report(WrittenLine line, List<Interpretation> ways, List<Decision> decisions, LineProblems problems) {
        for (Decision decision : decisions) {
            boolean guessed = decision.because() == Decision.Because.USAGE && REPEATS.contains(decision.habit());
            if (guessed && ways.stream().anyMatch(way -> differs(way, ways.get(0), decision))) {
                span(line.body(), decision.habit()).ifPresent(span -> problems.assumed(decision, span));
            }
        }
    }

    private static boolean differs(Interpretation way, Interpretation chosen, Decision decision) {
        return way.fits()
                && way.makes() != chosen.makes()
                && way.options()[decision.habit().ordinal()] != decision.option();
    }

    private static Optional<Span> span(List<Node> nodes, Habit habit) {
        return nodes.stream().flatMap(node -> span(node, habit).stream()).findFirst();
    }

    private static Optional<Span> span(Node node, Habit habit) {
        if (node instanceof Choice choice) {
            return choice.habit() == habit ? Optional.of(choice.span()) : span(choice.options(), habit);
        } else if (node instanceof Repeat repeat) {
            return span(repeat.body(), habit);
        }
        return node instanceof Sequence sequence ? span(sequence.body(), habit) : Optional.empty();
    }
}
