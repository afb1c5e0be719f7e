package roundwright.group.counts;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;

/**
 * A report read out of a table.
 *
 * @param line of the table it stands in
 * @param student as the group calls them
 */
public record CountRow(
        int line,
        String student,
        String part,
        int round,
        CountReport.Kind kind,
        OptionalInt count,
        Optional<LocalDate> date,
        String note) {}
