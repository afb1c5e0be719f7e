package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import roundwright.group.StudentId;
import roundwright.store.FiledReport;

/** Takes something out together with all that hangs on it, the outermost first. */
final class Removal {
    private Removal() {}

    /** A group with its sessions and its students' work; students who are in no other group go too. */
    static List<Write<?>> of(WorkbookView view, GroupView group) {
        List<Write<?>> writes = new ArrayList<>();
        group.students().forEach(student -> writes.addAll(of(view, group, student.id())));
        group.sessions().forEach(session -> writes.add(Write.delete(Kind.SESSION, session)));
        writes.add(Write.delete(Kind.GROUP, group.group()));
        return writes;
    }

    /** A student out of a group, with their work in it; wholly, if they are in no other group. */
    static List<Write<?>> of(WorkbookView view, GroupView group, StudentId student) {
        List<Write<?>> writes = new ArrayList<>(work(group, student));
        writes.add(Write.delete(Kind.ENROLMENT, Lookup.there(group.enrolment(student), student)));
        boolean elsewhere = view.groups().stream()
                .anyMatch(other -> other != group && other.student(student).isPresent());
        if (!elsewhere) {
            writes.add(Write.delete(Kind.STUDENT, Lookup.student(view, student)));
        }
        return writes;
    }

    /** A student out of every group, and out of the file. */
    static List<Write<?>> everywhere(WorkbookView view, StudentId student) {
        List<Write<?>> writes = new ArrayList<>();
        for (GroupView group : view.groups()) {
            group.enrolment(student).ifPresent(enrolment -> {
                writes.addAll(work(group, student));
                writes.add(Write.delete(Kind.ENROLMENT, enrolment));
            });
        }
        writes.add(Write.delete(Kind.STUDENT, Lookup.student(view, student)));
        return writes;
    }

    private static List<Write<?>> work(GroupView group, StudentId student) {
        List<Write<?>> writes = new ArrayList<>();
        group.reports(student)
                .forEach(report -> writes.add(Write.delete(Kind.REPORT, new FiledReport(group.id(), report))));
        group.notes().stream()
                .filter(note -> note.student().equals(student))
                .forEach(note -> writes.add(Write.delete(Kind.NOTE, note)));
        group.marks().stream()
                .filter(mark -> mark.student().equals(student))
                .forEach(mark -> writes.add(Write.delete(Kind.MARK, mark)));
        return writes;
    }
}
