package roundwright.group;

import java.time.Instant;
import java.util.OptionalInt;

/**
 * What a student said of one round, at one time. Reports are history: a later report on the same round stands above an
 * earlier one and does not erase it.
 *
 * @param sequence orders the reports of a file as they were entered, from 1
 * @param student who reported
 * @param part name of the part
 * @param round number of the round in the part
 * @param kind what was said
 * @param count stitches, where a count was said
 * @param at when it was entered
 * @param note the teacher's own words; may be empty
 */
public record CountReport(
        long sequence,
        StudentId student,
        String part,
        int round,
        Kind kind,
        OptionalInt count,
        Instant at,
        String note) {
    /** What a report says. */
    public enum Kind {
        /** The round is done and has this count. */
        COUNTED,
        /** The round is being worked; a count, if any, is where the student stopped. */
        UNFINISHED,
        /** The work was pulled back so that this round is the last one left; its count is given where it was counted. */
        PULLED_BACK
    }

    public CountReport {
        if (count.isPresent() && count.getAsInt() < 0) {
            throw new IllegalArgumentException("a count cannot be " + count.getAsInt());
        }
        if (kind == Kind.COUNTED && count.isEmpty()) {
            throw new IllegalArgumentException("a counted round needs its count");
        }
    }
}
