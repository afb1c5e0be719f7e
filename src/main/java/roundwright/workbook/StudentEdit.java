package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import roundwright.group.Enrolment;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.wording.Wording;

/** What is done to the students of a group. */
public sealed interface StudentEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /** New students, after those who are there; one who is in the workbook already only joins the group. Ids are from {@link Workbook#newStudent()}. */
    record AddStudents(GroupId group, List<Student> students) implements StudentEdit {
        public AddStudents {
            students = List.copyOf(students);
        }

        public AddStudents(GroupId group, Student student) {
            this(group, List.of(student));
        }

        @Override
        public String name(WorkbookView view) {
            return WORDS.say(
                    "edit.add-students", students.size(), students.get(0).name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            List<Write<?>> writes = new ArrayList<>();
            int place = Lookup.group(view, group).enrolments().stream()
                    .mapToInt(Enrolment::place)
                    .max()
                    .orElse(0);
            for (Student student : students) {
                if (view.student(student.id()).isEmpty()) {
                    writes.add(Write.insert(Kind.STUDENT, student));
                }
                writes.add(Write.insert(Kind.ENROLMENT, new Enrolment(group, student.id(), ++place)));
            }
            return writes;
        }
    }

    /** Another name, hand, print or note for a student. */
    record ChangeStudent(Student student) implements StudentEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.change-student", student.name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return List.of(Write.replace(Kind.STUDENT, Lookup.student(view, student.id()), student));
        }
    }

    /** A student leaves a group, and their work in it goes; one who is in no other group is forgotten. */
    record RemoveStudent(GroupId group, StudentId student) implements StudentEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say(
                    "edit.remove-student", Lookup.student(view, student).name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return Removal.of(view, Lookup.group(view, group), student);
        }
    }
}
