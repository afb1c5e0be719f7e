package roundwright.group;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How one student stands in one round.
 *
 * @param expected the count to reach, where the pattern says one
 * @param state what the reports come to
 * @param current the report that counts now, where one does
 * @param history every report on the round as they came, those that were taken back too
 */
public record RoundStanding(
        RoundPlace place, OptionalInt expected, State state, Optional<CountReport> current, List<CountReport> history) {
    /** What the reports on a round come to. */
    public enum State {
        /** Not reached. */
        NOT_YET,
        /** Nothing was said of it, though a later round was reported. */
        NOT_REPORTED,
        RIGHT,
        /** More stitches than the pattern says. */
        OVER,
        /** Fewer stitches than the pattern says. */
        UNDER,
        /** Done and counted; the pattern says no count to hold it against. */
        COUNTED,
        UNFINISHED,
        /** It was done, and the work has been pulled back below it since. */
        PULLED_BACK;

        /** Whether the round is worked and in the student's hands. */
        public boolean done() {
            return this == RIGHT || this == OVER || this == UNDER || this == COUNTED;
        }

        /** Whether the count differs from the pattern's. */
        public boolean off() {
            return this == OVER || this == UNDER;
        }
    }

    public RoundStanding {
        history = List.copyOf(history);
    }

    /** The count that holds now: of the finished round, or where an unfinished one stopped. */
    public OptionalInt count() {
        return current.map(CountReport::count).orElse(OptionalInt.empty());
    }

    /** Stitches more (or, negative, fewer) than the pattern says; 0 where the round is not off. */
    public int difference() {
        return state.off() ? count().orElseThrow() - expected.orElseThrow() : 0;
    }
}
