package roundwright.workbook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.StoreException;

/** A workbook in a temporary folder with a course, a group, students and a session, for tests to work on. */
final class Sketch implements AutoCloseable {
    static final Instant NOW = Instant.parse("2026-02-03T19:12:05.123Z");

    final Path file;
    final Workbook workbook;
    final CourseId course;
    final GroupId group;
    final SessionId session;
    final List<StudentId> students = new ArrayList<>();

    Sketch(Path folder, String... names) throws StoreException {
        file = folder.resolve("trial.db");
        workbook = Workbook.create(file, folder.resolve("backups"), Clock.fixed(NOW, ZoneOffset.UTC));
        course = workbook.newCourse();
        workbook.apply(new CourseEdit.AddCourse(course, "Acorn", "# Acorn\n"));
        group = workbook.newGroup();
        workbook.apply(new GroupEdit.AddGroup(
                new Group(group, course, "Tuesdays", Optional.of(LocalDate.of(2026, 2, 3)), "Mill Lane")));
        for (String name : names) {
            StudentId student = workbook.newStudent();
            students.add(student);
            workbook.apply(new StudentEdit.AddStudents(group, new Student(student, name, false, false, "")));
        }
        session = workbook.newSession();
        workbook.apply(new SessionEdit.AddSession(
                new Session(session, group, LocalDate.of(2026, 2, 3), OptionalInt.of(1), "", "")));
    }

    GroupView view() {
        return workbook.view().group(group).orElseThrow();
    }

    void count(int student, int round, int count) throws StoreException {
        workbook.apply(new CountEdit.ReportCounts(group, NewCount.of(students.get(student), "Acorn", round, count)));
    }

    /** Closes the file and opens it again. */
    Workbook reopened() throws StoreException {
        workbook.close();
        return Workbook.open(file, file.resolveSibling("backups"), Clock.fixed(NOW, ZoneOffset.UTC));
    }

    @Override
    public void close() throws StoreException {
        workbook.close();
    }
}
