package roundwright.workbook;

import java.util.Optional;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.KeptCourse;

/** Finds what an edit speaks of; asking for what is not there is the program's own error. */
final class Lookup {
    private Lookup() {}

    static KeptCourse course(WorkbookView view, CourseId id) {
        return there(view.course(id), id);
    }

    static GroupView group(WorkbookView view, GroupId id) {
        return there(view.group(id), id);
    }

    static Student student(WorkbookView view, StudentId id) {
        return there(view.student(id), id);
    }

    static Student student(GroupView group, StudentId id) {
        return there(group.student(id), id);
    }

    static Session session(GroupView group, SessionId id) {
        return there(group.session(id), id);
    }

    static <V> V there(Optional<V> value, Object id) {
        return value.orElseThrow(() -> new IllegalArgumentException("not in the workbook: " + id));
    }
}
