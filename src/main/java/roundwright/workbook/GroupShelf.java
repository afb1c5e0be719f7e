package roundwright.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import roundwright.group.Enrolment;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.store.FiledReport;

/** What the workbook holds of one group, by identity. Changed only while it belongs to a {@link Draft}. */
record GroupShelf(
        Map<Object, Enrolment> enrolments,
        Map<Object, Session> sessions,
        Map<Object, RegisterMark> marks,
        Map<Object, FiledReport> reports,
        Map<Object, Note> notes) {
    GroupShelf() {
        this(
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new LinkedHashMap<>());
    }

    GroupShelf copy() {
        return new GroupShelf(
                new LinkedHashMap<>(enrolments),
                new LinkedHashMap<>(sessions),
                new LinkedHashMap<>(marks),
                new LinkedHashMap<>(reports),
                new LinkedHashMap<>(notes));
    }
}
