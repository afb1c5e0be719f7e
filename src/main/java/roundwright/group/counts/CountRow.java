package roundwright.group.counts;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;

/**
 * A report read out of a table.
 *
 * @param line of the table it stands in, and {@code column} that says of which round it is, both from 1
 * @param student as the group calls them
 * @param said when it was said, by the clock of the place; noon where only the day is known
 * @param checks answers to checks made at the table, by the name of the check
 */
public record CountRow(
        int line,
        int column,
        String student,
        RoundPlace place,
        CountReport.Kind kind,
        OptionalInt count,
        Optional<LocalDateTime> said,
        String note,
        Map<String, String> checks) {
    public CountRow {
        checks = Map.copyOf(checks);
    }
}
