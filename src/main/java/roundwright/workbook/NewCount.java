package roundwright.workbook;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.group.StudentId;

/**
 * A count about to be filed.
 *
 * @param at when it was said, where that is known from elsewhere (a message); else it is the time of the edit
 * @param checks answers to checks made at the table, by the name of the check
 */
public record NewCount(
        StudentId student,
        String part,
        int round,
        CountReport.Kind kind,
        OptionalInt count,
        Optional<Instant> at,
        String note,
        Map<String, String> checks) {
    public NewCount {
        checks = Map.copyOf(checks);
    }

    /** A count without answers to checks. */
    public NewCount(
            StudentId student,
            String part,
            int round,
            CountReport.Kind kind,
            OptionalInt count,
            Optional<Instant> at,
            String note) {
        this(student, part, round, kind, count, at, note, Map.of());
    }

    /** A finished round's count. */
    public static NewCount of(StudentId student, String part, int round, int count) {
        return new NewCount(
                student, part, round, CountReport.Kind.COUNTED, OptionalInt.of(count), Optional.empty(), "");
    }

    /** A round that is being worked, so far without a count. */
    public static NewCount unfinished(StudentId student, String part, int round, OptionalInt soFar) {
        return new NewCount(student, part, round, CountReport.Kind.UNFINISHED, soFar, Optional.empty(), "");
    }

    /** Work pulled back so that {@code round} is the last one left (0: none is). */
    public static NewCount pulledBackTo(StudentId student, String part, int round) {
        return new NewCount(
                student, part, round, CountReport.Kind.PULLED_BACK, OptionalInt.empty(), Optional.empty(), "");
    }

    CountReport filed(Stamp stamp) {
        return new CountReport(
                stamp.sequence().getAsLong(),
                student,
                part,
                round,
                kind,
                count,
                at.orElse(stamp.now()),
                note,
                checks,
                Optional.empty());
    }
}
