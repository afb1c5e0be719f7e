package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.group.Attendance;
import roundwright.group.GroupId;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.StudentId;
import roundwright.wording.Wording;

/** What is done to the sessions of a group: their dates, logs and registers. */
public sealed interface SessionEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /** A new session; its id is from {@link Workbook#newSession()}. */
    record AddSession(Session session) implements SessionEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.add-session", session.date().toString());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            Lookup.group(view, session.group());
            return List.of(Write.insert(Kind.SESSION, session));
        }
    }

    /** Another date, lesson or log for a session. */
    record ChangeSession(Session session) implements SessionEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.change-session", session.date().toString());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            GroupView group = Lookup.group(view, session.group());
            return List.of(Write.replace(Kind.SESSION, Lookup.session(group, session.id()), session));
        }
    }

    /** What was reached in a session, and what to remember. */
    record WriteLog(GroupId group, SessionId session, String reached, String remember) implements SessionEdit {
        @Override
        public String name(WorkbookView view) {
            return changed(view).name(view);
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return changed(view).writes(view, stamp);
        }

        private ChangeSession changed(WorkbookView view) {
            return new ChangeSession(
                    Lookup.session(Lookup.group(view, group), session).logged(reached, remember));
        }
    }

    /** A session goes, with its log and register. */
    record RemoveSession(GroupId group, SessionId session) implements SessionEdit {
        @Override
        public String name(WorkbookView view) {
            Session found = Lookup.session(Lookup.group(view, group), session);
            return WORDS.say("edit.remove-session", found.date().toString());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            GroupView found = Lookup.group(view, group);
            List<Write<?>> writes = new ArrayList<>();
            found.marks().stream()
                    .filter(mark -> mark.session().equals(session))
                    .forEach(mark -> writes.add(Write.delete(Kind.MARK, mark)));
            writes.add(Write.delete(Kind.SESSION, Lookup.session(found, session)));
            return writes;
        }
    }

    /** Marks students in the register of a session; an empty attendance takes the mark away. */
    record MarkAttendance(GroupId group, SessionId session, List<StudentId> students, Optional<Attendance> attendance)
            implements SessionEdit {
        public MarkAttendance {
            students = List.copyOf(students);
        }

        public MarkAttendance(GroupId group, SessionId session, StudentId student, Attendance attendance) {
            this(group, session, List.of(student), Optional.of(attendance));
        }

        @Override
        public String name(WorkbookView view) {
            Session found = Lookup.session(Lookup.group(view, group), session);
            return WORDS.say("edit.mark", found.date().toString());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            GroupView found = Lookup.group(view, group);
            Lookup.session(found, session);
            List<Write<?>> writes = new ArrayList<>();
            for (StudentId student : students) {
                Lookup.student(found, student);
                Optional<RegisterMark> after = attendance.map(mark -> new RegisterMark(group, session, student, mark));
                Write.change(Kind.MARK, found.mark(session, student), after).ifPresent(writes::add);
            }
            return writes;
        }
    }
}
