package roundwright.group.counts;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.counts.OutTable.Cell;
import roundwright.wording.Wording;

/** The counts of a group as tables that any spreadsheet opens and {@link CountsReader} reads back. */
public final class CountsTables {
    private static final Wording WORDS = Wording.of("group");

    private CountsTables() {}

    private record Key(StudentId student, RoundPlace place) {}

    /**
     * One row a report, as they came. A count that another was put in the place of is left out, and so is what was taken back.
     *
     * @param reports in the order in which they were entered
     * @param name what each student is called
     * @param zone the clock that times are written by
     */
    public static OutTable reports(List<CountReport> reports, Function<StudentId, String> name, ZoneId zone) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(Stream.of("student", "part", "round", "count", "date", "note", "pulled_back", "checks")
                .map(OutTable::words)
                .toList());
        Set<Long> replaced = replaced(reports);
        reports.stream()
                .filter(report -> report.stands() && !replaced.contains(report.sequence()))
                .forEach(report -> rows.add(cells(report, name, zone)));
        return new OutTable(WORDS.say("table.sheet-reports"), rows);
    }

    private static Set<Long> replaced(List<CountReport> reports) {
        Set<Long> replaced = new HashSet<>();
        Map<Key, CountReport> holding = new HashMap<>();
        for (CountReport report : reports) {
            RoundPlace place = new RoundPlace(report.part(), report.round());
            if (report.stands() && report.kind() == CountReport.Kind.PULLED_BACK) {
                holding.keySet().removeIf(key -> above(key, report));
            } else if (report.stands()) {
                CountReport before = holding.put(new Key(report.student(), place), report);
                if (before != null) {
                    replaced.add(before.sequence());
                }
            }
        }
        return replaced;
    }

    private static boolean above(Key key, CountReport report) {
        return key.student().equals(report.student())
                && key.place().part().equals(report.part())
                && key.place().round() > report.round();
    }

    private static List<Cell> cells(CountReport report, Function<StudentId, String> name, ZoneId zone) {
        LocalDateTime at =
                LocalDateTime.ofInstant(report.at(), zone).withSecond(0).withNano(0);
        return List.of(
                OutTable.words(name.apply(report.student())),
                OutTable.words(report.part()),
                OutTable.whole(report.round()),
                count(report),
                new Cell.At(at),
                OutTable.words(report.note()),
                OutTable.words(report.kind() == CountReport.Kind.PULLED_BACK ? "yes" : ""),
                OutTable.words(checks(report)));
    }

    private static Cell count(CountReport report) {
        if (report.kind() == CountReport.Kind.UNFINISHED) {
            return OutTable.words(
                    "…" + (report.count().isPresent() ? report.count().getAsInt() : ""));
        }
        return report.count().isPresent() ? OutTable.whole(report.count().getAsInt()) : OutTable.words("");
    }

    private static String checks(CountReport report) {
        return String.join(
                ";",
                report.checks().entrySet().stream()
                        .map(answer -> answer.getKey() + "=" + answer.getValue())
                        .toList());
    }

    /**
     * One row a student and one column a round, with the counts that hold now.
     *
     * @param standing how each student stands in the course
     */
    public static OutTable group(
            Expectations expectations, List<Student> students, Function<Student, Standing> standing) {
        List<RoundPlace> places = expectations.places();
        boolean several = places.stream().map(RoundPlace::part).distinct().count() > 1;
        List<List<Cell>> rows = new ArrayList<>();
        List<Cell> head = new ArrayList<>(List.of(OutTable.words("student")));
        places.forEach(place -> head.add(OutTable.words((several ? place.part() + " " : "") + "R" + place.round())));
        rows.add(head);
        for (Student student : students) {
            List<Cell> row = new ArrayList<>(List.of(OutTable.words(student.name())));
            standing.apply(student).rounds().forEach(round -> row.add(cell(round)));
            rows.add(row);
        }
        return new OutTable(WORDS.say("table.sheet-counts"), rows);
    }

    private static Cell cell(RoundStanding round) {
        return round.state() == RoundStanding.State.PULLED_BACK
                ? OutTable.words("")
                : round.current().map(CountsTables::count).orElse(OutTable.words(""));
    }
}
