package roundwright.desktop.desk;

import java.util.HashMap;
import java.util.Map;
import roundwright.group.StudentId;
import roundwright.store.KeptCourse;
import roundwright.workbook.WorkbookView;

/**
 * A course of the file, read, and how everyone who takes it stands: all that takes long before it can be laid on the desk. Made away
 * from the event thread.
 */
public record ReadCourse(OpenCourse course, Map<StudentId, KnownStanding> standings) {
    public ReadCourse {
        standings = Map.copyOf(standings);
    }

    /** Reads a course of the file. */
    public static ReadCourse of(KeptCourse kept, WorkbookView view) {
        return of(OpenCourse.of(kept), view);
    }

    /** Of a course whose text has been read already. */
    static ReadCourse of(OpenCourse course, WorkbookView view) {
        Map<StudentId, KnownStanding> standings = new HashMap<>();
        view.groups(course.kept().id())
                .forEach(group -> group.students()
                        .forEach(student ->
                                standings.put(student.id(), KnownStanding.of(course, group.reports(student.id())))));
        return new ReadCourse(course, standings);
    }
}
