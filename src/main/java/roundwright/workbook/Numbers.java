package roundwright.workbook;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import roundwright.group.Student;
import roundwright.store.KeptCourse;

/** Hands out identities that nothing in the file has, and that nothing in this run of the program had. */
final class Numbers {
    final AtomicLong courses;
    final AtomicLong groups;
    final AtomicLong students;
    final AtomicLong sessions;
    final AtomicLong reports;

    Numbers(WorkbookView view) {
        courses = after(
                view.courses().stream(), (KeptCourse course) -> course.id().value());
        groups = after(view.groups().stream(), (GroupView group) -> group.id().value());
        students = after(
                view.studentsCopy().values().stream(),
                (Student student) -> student.id().value());
        sessions = after(
                view.groups().stream().flatMap(group -> group.sessions().stream()),
                session -> session.id().value());
        reports = after(view.groups().stream(), group -> group.shelf().reports().newest());
    }

    /** Hands out nothing any more that another state of the file has. */
    void passOver(WorkbookView other) {
        Numbers theirs = new Numbers(other);
        raise(courses, theirs.courses);
        raise(groups, theirs.groups);
        raise(students, theirs.students);
        raise(sessions, theirs.sessions);
        raise(reports, theirs.reports);
    }

    private static void raise(AtomicLong own, AtomicLong least) {
        own.accumulateAndGet(least.get(), Math::max);
    }

    private static <V> AtomicLong after(Stream<V> values, ToLongFunction<V> number) {
        return new AtomicLong(values.mapToLong(number).max().orElse(0));
    }
}
