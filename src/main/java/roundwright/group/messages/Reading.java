package roundwright.group.messages;

import java.time.LocalDateTime;
import java.util.ArrayList;
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
 * @param inferred whether the words say only that the rounds are right ("all right up to round 12"), and the count is the pattern's
 * @param before counts that were said earlier of the same rounds and that this one replaces, the oldest first
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
        Span source,
        boolean inferred,
        List<Earlier> before)
        implements Finding {
    /** A reading less sure than this is shown for a decision. */
    public static final double DOUBTFUL = 0.5;

    public Reading {
        before = List.copyOf(before);
    }

    static Reading of(
            Optional<String> student,
            Optional<String> part,
            int from,
            int to,
            Said said,
            double confidence,
            Optional<LocalDateTime> at,
            Span source) {
        return new Reading(
                student,
                part,
                from,
                to,
                said.count(),
                said.pulledBack(),
                confidence,
                at,
                source,
                said.inferred(),
                List.of());
    }

    /** Earlier counts of the same rounds that are kept. */
    private static final int MOST_BEFORE = 20;

    public boolean doubtful() {
        return confidence < DOUBTFUL;
    }

    /** Whether both speak of the same student's same rounds. */
    boolean sameRounds(Reading other) {
        return student.equals(other.student) && part.equals(other.part) && from == other.from && to == other.to;
    }

    /** Whether both stand side by side for a choice: "41 or 42". */
    boolean besides(Reading other) {
        return doubtful() && other.doubtful() && count != other.count;
    }

    Reading of(Optional<String> other) {
        return copy(other, part, before);
    }

    Reading ofPart(String other) {
        return copy(student, Optional.of(other), before);
    }

    /** This reading in the place of an earlier one, which it keeps unless both say the same. */
    Reading after(Reading earlier) {
        List<Earlier> all = new ArrayList<>(earlier.before);
        if (earlier.count != count) {
            all.add(new Earlier(earlier.count, earlier.pulledBack, earlier.at, earlier.source));
        }
        all.addAll(before);
        return copy(student, part, all.subList(Math.max(0, all.size() - MOST_BEFORE), all.size()));
    }

    private Reading copy(Optional<String> who, Optional<String> ofPart, List<Earlier> earlier) {
        return new Reading(who, ofPart, from, to, count, pulledBack, confidence, at, source, inferred, earlier);
    }

    /** Every round it speaks of. */
    public List<Integer> rounds() {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }
}
