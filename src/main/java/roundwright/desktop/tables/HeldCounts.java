package roundwright.desktop.tables;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.group.counts.CountRow;
import roundwright.workbook.GroupView;

/**
 * What a group has reported already, to be held against rows of a table: the same file taken twice files nothing twice. A row with a
 * day is there already where the same was said on that day; one without, where the table's last word on that round is the group's.
 */
final class HeldCounts {
    private record What(StudentId student, RoundPlace place, CountReport.Kind kind, OptionalInt count) {}

    private record Where(StudentId student, RoundPlace place) {}

    private final ZoneId zone;
    private final Map<What, List<CountReport>> unmatched = new HashMap<>();
    private final Map<Where, CountReport> newest = new HashMap<>();
    private final Map<Where, CountRow> lastWord = new HashMap<>();

    HeldCounts(GroupView group, ZoneId zone) {
        this.zone = zone;
        group.reports().stream().filter(CountReport::stands).forEach(report -> {
            RoundPlace place = new RoundPlace(report.part(), report.round());
            unmatched
                    .computeIfAbsent(
                            new What(report.student(), place, report.kind(), report.count()), key -> new ArrayList<>())
                    .add(report);
            newest.put(new Where(report.student(), place), report);
        });
    }

    /** The rows that say something new, in their order. */
    List<CountRow> without(List<CountRow> rows, Map<String, StudentId> students) {
        rows.forEach(row -> where(row, students).ifPresent(where -> lastWord.put(where, row)));
        return rows.stream().filter(row -> !there(row, students)).toList();
    }

    private static Optional<Where> where(CountRow row, Map<String, StudentId> students) {
        return Optional.ofNullable(students.get(row.student())).map(student -> new Where(student, row.place()));
    }

    private boolean there(CountRow row, Map<String, StudentId> students) {
        Optional<Where> where = where(row, students);
        if (where.isEmpty()) {
            return false;
        }
        What what = new What(where.get().student(), row.place(), row.kind(), row.count());
        List<CountReport> same = unmatched.getOrDefault(what, List.of());
        Optional<CountReport> match = row.said().isPresent()
                ? same.stream().filter(report -> sameDay(row, report)).findFirst()
                : same.stream().filter(report -> lastWordHolds(where.get())).findFirst();
        match.ifPresent(same::remove);
        return match.isPresent();
    }

    private boolean sameDay(CountRow row, CountReport report) {
        return row.said()
                .orElseThrow()
                .toLocalDate()
                .equals(report.at().atZone(zone).toLocalDate());
    }

    private boolean lastWordHolds(Where where) {
        CountRow last = lastWord.get(where);
        CountReport held = newest.get(where);
        return last.kind() == held.kind() && last.count().equals(held.count());
    }
}
