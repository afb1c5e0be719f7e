package roundwright.group;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What a student said of one round, at one time. Reports are history: a later report on the same round stands above an
 * earlier one and does not erase it, and one that was taken back is kept and marked so.
 *
 * @param sequence orders the reports of a file as they were entered, from 1
 * @param student who reported
 * @param part name of the part
 * @param round number of the round in the part; 0 in a report that everything was pulled back
 * @param kind what was said
 * @param count stitches, where a count was said
 * @param at when it was said: when it was entered, or the time of the message it came in
 * @param note the teacher's own words; may be empty
 * @param checks answers to the checks made at the table, by the name of the check: {@code look-for-a-gap -> yes}
 * @param withdrawn when the teacher took the entry back as made in error; such a report counts for nothing
 */
public record CountReport(
        long sequence,
        StudentId student,
        String part,
        int round,
        Kind kind,
        OptionalInt count,
        Instant at,
        String note,
        Map<String, String> checks,
        Optional<Instant> withdrawn) {
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
        if (round < 0) {
            throw new IllegalArgumentException("no round " + round);
        }
        if (kind == Kind.COUNTED && count.isEmpty()) {
            throw new IllegalArgumentException("a counted round needs its count");
        }
        checks = checks.isEmpty() ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(checks));
    }

    /** A report that stands, with no checks made. */
    public CountReport(
            long sequence,
            StudentId student,
            String part,
            int round,
            Kind kind,
            OptionalInt count,
            Instant at,
            String note) {
        this(sequence, student, part, round, kind, count, at, note, Map.of(), Optional.empty());
    }

    /** Whether it counts: it has not been taken back. */
    public boolean stands() {
        return withdrawn.isEmpty();
    }

    public CountReport withdrawn(Optional<Instant> when) {
        return new CountReport(sequence, student, part, round, kind, count, at, note, checks, when);
    }

    /** The same report where the pattern calls the part otherwise. */
    public CountReport ofPart(String other) {
        return new CountReport(sequence, student, other, round, kind, count, at, note, checks, withdrawn);
    }

    public CountReport checked(Map<String, String> answers) {
        return new CountReport(sequence, student, part, round, kind, count, at, note, answers, withdrawn);
    }
}
