package roundwright.group.messages;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.notation.Span;

/**
 * A count read out of a message.
 *
 * @param student whose count it is, as the group calls them; where no group is given, as the text does; empty where it is not said
 * @param part the part it names, if it names one
 * @param from first round, and {@code to} the last, that has this count
 * @param count stitches, of each of the rounds
 * @param pulledBack whether it was counted after pulling back
 * @param confidence from 0 to 1: how surely the text means this. Below {@value #DOUBTFUL} somebody has to decide.
 * @param at when the message was sent, where the text says
 */
public record Reading(
        Optional<String> student,
        Optional<String> part,
        int from,
        int to,
        int count,
        boolean pulledBack,
        double confidence,
        Optional<LocalDateTime> at,
        Span source)
        implements Finding {
    /** A reading less sure than this is shown for a decision. */
    public static final double DOUBTFUL = 0.5;

    public boolean doubtful() {
        return confidence < DOUBTFUL;
    }

    /** Whether both speak of the same student's same rounds. */
    boolean sameRounds(Reading other) {
        return student.equals(other.student) && part.equals(other.part) && from == other.from && to == other.to;
    }

    Reading of(Optional<String> other) {
        return new Reading(other, part, from, to, count, pulledBack, confidence, at, source);
    }

    /** Every round it speaks of. */
    public List<Integer> rounds() {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }
}
