package roundwright.workbook;

import java.util.Comparator;
import java.util.List;
import roundwright.group.CountReport;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.StudentId;

/** What is held about a student in one group. */
record Held(GroupView group, List<RegisterMark> marks, List<CountReport> reports, List<Note> notes) {
    /** Of every group that the student is in. */
    static List<Held> about(WorkbookView view, StudentId student) {
        return view.groups().stream()
                .filter(group -> group.student(student).isPresent())
                .map(group -> of(group, student))
                .toList();
    }

    private static Held of(GroupView group, StudentId student) {
        return new Held(
                group,
                group.marks().stream()
                        .filter(mark -> mark.student().equals(student))
                        .sorted(Comparator.comparing(
                                mark -> Lookup.session(group, mark.session()).date()))
                        .toList(),
                group.reports(student),
                group.notes().stream()
                        .filter(note -> note.student().equals(student))
                        .sorted(Comparator.comparing(Note::part).thenComparing(Note::round))
                        .toList());
    }
}
