package roundwright.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import roundwright.group.CountReport;
import roundwright.group.Session;
import roundwright.group.Student;

/** All that a view holds, as lines that can be compared. */
final class Content {
    private Content() {}

    /** Everything, down to the reports that were taken back. */
    static List<String> of(WorkbookView view) {
        return lines(view, true);
    }

    /** Everything that counts: without the reports that were taken back. */
    static List<String> thatCounts(WorkbookView view) {
        return lines(view, false);
    }

    private static List<String> lines(WorkbookView view, boolean withdrawnToo) {
        List<String> lines = new ArrayList<>();
        view.courses().forEach(course -> lines.add(course.toString()));
        view.studentsCopy().values().forEach(student -> lines.add(student.toString()));
        view.settingsCopy().values().forEach(setting -> lines.add(setting.toString()));
        view.groups().forEach(group -> add(lines, group, withdrawnToo));
        Collections.sort(lines);
        return lines;
    }

    private static void add(List<String> lines, GroupView group, boolean withdrawnToo) {
        lines.add(group.group().toString());
        group.enrolments().forEach(enrolment -> lines.add(enrolment.toString()));
        lines.add("order " + group.students().stream().map(Student::id).toList());
        lines.add("dates " + group.sessions().stream().map(Session::id).toList());
        group.sessions().forEach(session -> lines.add(session.toString()));
        group.marks().forEach(mark -> lines.add(mark.toString()));
        group.notes().forEach(note -> lines.add(note.toString()));
        group.reports().stream()
                .filter(report -> withdrawnToo || report.stands())
                .map(CountReport::toString)
                .forEach(line -> lines.add(group.id() + line));
    }
}
