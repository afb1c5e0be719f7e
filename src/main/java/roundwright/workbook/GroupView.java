package roundwright.workbook;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.Enrolment;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;

/** A group as it stood at one moment: its students, sessions, register, reports and notes. Never changes. */
public final class GroupView {
    /** What a mark in the register is found by. */
    record MarkKey(SessionId session, StudentId student) {}

    /** What a note is found by. */
    record NoteKey(StudentId student, String part, int round) {}

    private final Group group;
    private final GroupShelf shelf;
    private final List<Student> students;
    private final Map<StudentId, Integer> places = new HashMap<>();
    private final List<Session> sessions;
    private final int reportCount;
    private volatile List<CountReport> reports;

    GroupView(Group group, GroupShelf shelf, Map<Object, Student> everyone) {
        this.group = group;
        this.shelf = shelf;
        this.students = shelf.enrolments().values().stream()
                .sorted(Comparator.comparingInt(Enrolment::place))
                .map(enrolment -> everyone.get(enrolment.student()))
                .toList();
        students.forEach(student -> places.put(student.id(), places.size()));
        this.sessions = shelf.sessions().values().stream()
                .sorted(Comparator.comparing(Session::date)
                        .thenComparing(session -> session.id().value()))
                .toList();
        this.reportCount = shelf.reports().size();
    }

    public GroupId id() {
        return group.id();
    }

    public Group group() {
        return group;
    }

    /** The students, in the teacher's order. */
    public List<Student> students() {
        return students;
    }

    public Optional<Student> student(StudentId id) {
        return Optional.ofNullable(places.get(id)).map(students::get);
    }

    /** The place of a student in the teacher's order, from 0; nothing for one who is not in the group. */
    public OptionalInt place(StudentId id) {
        Integer place = places.get(id);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** The sessions, by date. */
    public List<Session> sessions() {
        return sessions;
    }

    public Optional<Session> session(SessionId id) {
        return Optional.ofNullable(shelf.sessions().get(id));
    }

    public Optional<Attendance> attendance(SessionId session, StudentId student) {
        return mark(session, student).map(RegisterMark::attendance);
    }

    /** Every report of every student as they were entered, those that were taken back too. */
    public List<CountReport> reports() {
        List<CountReport> known = reports;
        if (known == null) {
            known = shelf.reports()
                    .all()
                    .sorted(Comparator.comparingLong(CountReport::sequence))
                    .toList();
            reports = known;
        }
        return known;
    }

    /** How many reports there are, those that were taken back too. */
    public int reportCount() {
        return reportCount;
    }

    /** The reports of one student as they were entered, those that were taken back too. */
    public List<CountReport> reports(StudentId student) {
        return shelf.reports().of(student);
    }

    public Optional<CountReport> report(long sequence) {
        return shelf.reports().find(sequence);
    }

    public Optional<String> note(StudentId student, String part, int round) {
        return Optional.ofNullable(shelf.notes().get(new NoteKey(student, part, round)))
                .map(Note::text);
    }

    Optional<RegisterMark> mark(SessionId session, StudentId student) {
        return Optional.ofNullable(shelf.marks().get(new MarkKey(session, student)));
    }

    Optional<Enrolment> enrolment(StudentId student) {
        return Optional.ofNullable(shelf.enrolments().get(student));
    }

    Optional<Note> noteValue(StudentId student, String part, int round) {
        return Optional.ofNullable(shelf.notes().get(new NoteKey(student, part, round)));
    }

    Collection<Enrolment> enrolments() {
        return shelf.enrolments().values();
    }

    Collection<RegisterMark> marks() {
        return shelf.marks().values();
    }

    Collection<Note> notes() {
        return shelf.notes().values();
    }

    boolean sameAs(GroupView other) {
        return group.equals(other.group) && shelf.sameAs(other.shelf);
    }

    GroupShelf shelf() {
        return shelf;
    }
}
