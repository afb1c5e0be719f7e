package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import roundwright.group.CountReport;
import roundwright.group.Note;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.KeptCourse;
import roundwright.wording.Wording;

/** Places outside a student's own rows where the teacher's words have their name in them. */
final class Mentions {
    private static final Wording WORDS = Wording.of("workbook");

    private final WorkbookView view;
    private final Student student;
    private final Pattern name;
    private final List<String> found = new ArrayList<>();

    private Mentions(WorkbookView view, Student student) {
        this.view = view;
        this.student = student;
        this.name = Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + Pattern.quote(student.name().strip()) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Each place in words, such as "the log of 2026-02-03 (Tuesdays)". */
    static List<String> of(WorkbookView view, Student student) {
        Mentions mentions = new Mentions(view, student);
        mentions.look();
        return List.copyOf(mentions.found);
    }

    private void look() {
        for (KeptCourse course : view.courses()) {
            note(course.text(), "course", course.name());
        }
        view.studentsCopy().values().stream()
                .filter(other -> !other.id().equals(student.id()))
                .forEach(other -> note(other.note(), "student", other.name()));
        view.groups().forEach(this::look);
    }

    private void look(GroupView group) {
        String called = group.group().name();
        note(called + "\n" + group.group().place(), "group", called);
        for (Session session : group.sessions()) {
            note(session.reached() + "\n" + session.remember(), "log", session.date(), called);
        }
        for (CountReport report : group.reports()) {
            if (!report.student().equals(student.id())) {
                note(report.note(), "round", report.round(), report.part(), name(report.student()));
            }
        }
        for (Note note : group.notes()) {
            if (!note.student().equals(student.id())) {
                note(note.text(), "round", note.round(), note.part(), name(note.student()));
            }
        }
    }

    private String name(StudentId id) {
        return Lookup.student(view, id).name();
    }

    private void note(String text, String place, Object... arguments) {
        if (name.matcher(text).find()) {
            found.add(WORDS.say("mention." + place, arguments));
        }
    }
}
