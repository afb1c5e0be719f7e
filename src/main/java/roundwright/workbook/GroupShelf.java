package roundwright.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import roundwright.group.Enrolment;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;

/** What the workbook holds of one group, by identity. Changed only while it belongs to a {@link Draft}. */
record GroupShelf(
        Map<Object, Enrolment> enrolments,
        Map<Object, Session> sessions,
        Map<Object, RegisterMark> marks,
        ReportShelf reports,
        Map<Object, Note> notes) {
    GroupShelf() {
        this(
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new ReportShelf(),
                new LinkedHashMap<>());
    }

    GroupShelf copy() {
        return new GroupShelf(
                new LinkedHashMap<>(enrolments),
                new LinkedHashMap<>(sessions),
                new LinkedHashMap<>(marks),
                reports.copy(),
                new LinkedHashMap<>(notes));
    }

    boolean sameAs(GroupShelf other) {
        return enrolments.equals(other.enrolments)
                && sessions.equals(other.sessions)
                && marks.equals(other.marks)
                && reports.sameAs(other.reports)
                && notes.equals(other.notes);
    }
}
