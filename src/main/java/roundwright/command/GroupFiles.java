package roundwright.command;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.group.CountReport;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.sheet.content.GroupReports;

/** A group as two files say it: names, one a line, and a table of counts. Either is enough. */
final class GroupFiles {
    private final Terminal terminal;
    private final Clock clock;
    private boolean problems;

    GroupFiles(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    /** Whether something in them could not be used; it has been reported. */
    boolean problems() {
        return problems;
    }

    /** The group; empty where neither file is given. */
    Optional<GroupReports> read(Course course, Optional<String> names, Optional<String> counts)
            throws CommandException {
        if (names.isEmpty() && counts.isEmpty()) {
            return Optional.empty();
        }
        Map<String, StudentId> ids = new LinkedHashMap<>();
        List<CountReport> reports = List.of();
        if (counts.isPresent()) {
            CountsFile table = CountsFile.read(counts.get(), terminal, course.pattern());
            table.problems().forEach(terminal.err()::println);
            problems = !table.problems().isEmpty();
            table.rows()
                    .forEach(row -> ids.putIfAbsent(row.student(), row.report().student()));
            reports = table.rows().stream().map(CountsFile.Row::report).toList();
        }
        if (names.isPresent()) {
            TextSource.read(names.get(), terminal)
                    .text()
                    .lines()
                    .map(line -> line.replace("\uFEFF", "").strip())
                    .filter(line -> !line.isEmpty())
                    .forEach(line -> ids.computeIfAbsent(line, name -> new StudentId(free(ids))));
        }
        List<Student> students = ids.entrySet().stream()
                .map(entry -> new Student(entry.getValue(), entry.getKey(), false, false, ""))
                .toList();
        LocalDate today = LocalDate.now(clock);
        return Optional.of(new GroupReports("", students, reports, List.of(), List.of(), today));
    }

    private static long free(Map<String, StudentId> ids) {
        return ids.values().stream().mapToLong(StudentId::value).max().orElse(0) + 1;
    }
}
