package roundwright.desktop.messages;

import java.util.List;
import java.util.OptionalInt;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.messages.Earlier;
import roundwright.notation.Span;
import roundwright.workbook.NewCount;

/**
 * A count that can be filed.
 *
 * @param way how it was said, and so how sure it is
 * @param expected the count that the pattern says
 * @param source where in the text it was read
 * @param before counts of the same round that were said earlier and no longer hold
 * @param filed what is filed for it, in this order: before a count after pulling back stands the count that was pulled back
 */
public record FoundCount(
        Student student,
        RoundPlace place,
        OptionalInt count,
        Way way,
        OptionalInt expected,
        Span source,
        List<Earlier> before,
        List<NewCount> filed) {
    public FoundCount {
        before = List.copyOf(before);
        filed = List.copyOf(filed);
    }

    /** How a count was said. */
    public enum Way {
        COUNTED,
        PULLED_BACK,
        /** The round is still being worked; the count, if any, is where the student stopped. */
        UNFINISHED,
        /** The words say only that the round is right. */
        SAID_TO_BE_RIGHT,
        /** It may be meant, or another count; somebody has to decide. */
        DOUBTFUL,
        /** The student has this count of the round already. */
        THERE_ALREADY,
        /** The round is said to be right, but the student reported another count of it. */
        CONTRADICTED;

        /** Whether it is filed unless the teacher says otherwise. */
        public boolean sure() {
            return ordinal() < DOUBTFUL.ordinal();
        }
    }

    /** Whether only one of the two can be filed: "41 or 42". */
    boolean excludes(FoundCount other) {
        return student.id().equals(other.student.id()) && place.equals(other.place);
    }
}
