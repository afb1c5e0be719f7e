package roundwright.sheet.content;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.mistakes.help.GroupPicture;

/**
 * A group as the sheets need it.
 *
 * @param name what the teacher calls it; may be empty
 * @param students in the order of the register
 * @param reports of all of them, in the order in which they were entered
 * @param sessions in any order
 * @param marks of the register
 * @param today the day for which sheets are made
 */
public record GroupReports(
        String name,
        List<Student> students,
        List<CountReport> reports,
        List<Session> sessions,
        List<RegisterMark> marks,
        LocalDate today) {
    public GroupReports {
        students = List.copyOf(students);
        reports = List.copyOf(reports);
        sessions = List.copyOf(sessions);
        marks = List.copyOf(marks);
    }

    /** The group's picture. */
    public GroupPicture picture(Course course) {
        return GroupPicture.of(course, students, reports, sessions, marks, today);
    }

    Standing standing(Course course, Student student) {
        List<CountReport> own = reports.stream()
                .filter(report -> report.student().equals(student.id()))
                .toList();
        return Standing.derivedFrom(course, own);
    }

    Optional<Session> session(Lesson lesson) {
        return sessions.stream()
                .filter(session ->
                        session.lesson().isPresent() && session.lesson().getAsInt() == lesson.number())
                .findFirst();
    }

    Optional<Attendance> attendance(Session session, Student student) {
        return marks.stream()
                .filter(mark ->
                        mark.session().equals(session.id()) && mark.student().equals(student.id()))
                .map(RegisterMark::attendance)
                .findFirst();
    }
}
