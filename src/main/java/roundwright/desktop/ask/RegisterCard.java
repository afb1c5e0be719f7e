package roundwright.desktop.ask;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import roundwright.course.Lesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.look.Prose;
import roundwright.group.Attendance;
import roundwright.group.GroupId;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.wording.Dates;
import roundwright.wording.Wording;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupView;
import roundwright.workbook.SessionEdit;
import roundwright.workbook.Several;

/**
 * One session: what to remember from the one before, which lesson it gives, the register (who is there, late, absent, who has caught up),
 * and its log (what was reached, what to remember). A session of today is made where there is none.
 */
public final class RegisterCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = Dates.as("EEEE d MMMM");

    /** A session to be marked; it may not be in the file yet. */
    private record Choice(Optional<SessionId> id, LocalDate date, OptionalInt lesson) {
        @Override
        public String toString() {
            String day = DAY.format(date);
            return lesson.isPresent() ? WORDS.say("session-named", day, lesson.getAsInt()) : day;
        }
    }

    /** A lesson that a session can give; none where it gives something else. */
    private record GivenLesson(OptionalInt number, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient GroupView group;
    private final JComboBox<Choice> sessions = new JComboBox<>();
    private final JComboBox<GivenLesson> lessons = new JComboBox<>();
    private final Prose before = Prose.body("");
    private final RegisterTable table;
    private final JTextArea reached;
    private final JTextArea remember;

    public RegisterCard(Desk desk, Asking asking) {
        super(WORDS.say("register-head"), 600);
        this.desk = desk;
        this.asking = asking;
        this.group = desk.group().orElseThrow();
        choices().forEach(sessions::addItem);
        row(WORDS.say("session"), sessions, "");
        body().below(1, before);
        givenLessons().forEach(lessons::addItem);
        row(WORDS.say("lesson-given"), lessons, "");
        table = new RegisterTable(group.students(), student -> Names.of(student, desk));
        body().below(2, Prose.muted(WORDS.say("register-keys")));
        body().below(1, table);
        first(table);
        reached = row(WORDS.say("log-reached-field"), Fields.lines("", 2), "");
        remember = row(WORDS.say("log-remember-field"), Fields.lines("", 2), WORDS.say("log-remember-hint"));
        sessions.addActionListener(event -> showSession());
        chooseToday();
        showSession();
        answer(WORDS.say("keep"), this::keep);
        other(WORDS.say("all-there"), this::allThere);
        cancel(asking);
    }

    /** Today's session first, made anew where there is none, then those before it. */
    private List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        LocalDate today = desk.today();
        for (Session session : group.sessions()) {
            choices.add(0, new Choice(Optional.of(session.id()), session.date(), session.lesson()));
        }
        boolean hasToday = choices.stream().anyMatch(choice -> choice.date().equals(today));
        if (!hasToday) {
            OptionalInt lesson = nextLesson().map(OptionalInt::of).orElse(OptionalInt.empty());
            choices.add(0, new Choice(Optional.empty(), today, lesson));
        }
        return choices;
    }

    private Optional<Integer> nextLesson() {
        int last = group.sessions().stream()
                .filter(session -> session.date().isBefore(desk.today()))
                .flatMapToInt(session -> session.lesson().stream())
                .max()
                .orElse(0);
        return desk.course().flatMap(course -> course.lesson(last + 1)).map(Lesson::number);
    }

    private Choice chosen() {
        return (Choice) sessions.getSelectedItem();
    }

    /** Sessions to come may be in the file already; it is today's that is filled in. */
    private void chooseToday() {
        for (int index = sessions.getItemCount() - 1; index >= 0; index--) {
            if (sessions.getItemAt(index).date().equals(desk.today())) {
                sessions.setSelectedIndex(index);
            }
        }
    }

    private List<GivenLesson> givenLessons() {
        List<GivenLesson> given = new ArrayList<>();
        given.add(new GivenLesson(OptionalInt.empty(), WORDS.say("lesson-given-none")));
        desk.course()
                .ifPresent(open -> open.course()
                        .lessons()
                        .forEach(lesson -> given.add(new GivenLesson(
                                OptionalInt.of(lesson.number()),
                                WORDS.say("lesson-named", lesson.number(), lesson.name())))));
        return given;
    }

    private Optional<Session> kept() {
        return chosen().id().flatMap(group::session);
    }

    private void allThere() {
        Map<StudentId, Attendance> marks = new HashMap<>();
        group.students()
                .forEach(student ->
                        marks.put(student.id(), table.mark(student.id()).orElse(Attendance.THERE)));
        table.show(marks);
    }

    private void showSession() {
        Optional<LessonLog> last = LessonLog.before(group, chosen().date());
        before.setText(last.map(LessonLog::words).orElse(""));
        before.setVisible(last.isPresent());
        reached.setText(kept().map(Session::reached).orElse(""));
        remember.setText(kept().map(Session::remember).orElse(""));
        givenLessons().stream()
                .filter(lesson -> lesson.number().equals(chosen().lesson()))
                .findFirst()
                .ifPresentOrElse(lessons::setSelectedItem, () -> lessons.setSelectedIndex(0));
        showMarks();
        revalidate();
    }

    private void showMarks() {
        Map<StudentId, Attendance> marks = new HashMap<>();
        group.students()
                .forEach(student -> chosen().id()
                        .flatMap(id -> group.attendance(id, student.id()))
                        .ifPresent(mark -> marks.put(student.id(), mark)));
        table.show(marks);
    }

    private void keep() {
        Choice choice = chosen();
        GroupId id = group.id();
        List<Edit> edits = new ArrayList<>();
        SessionId session = choice.id().orElseGet(() -> desk.workbook().newSession());
        Session written = new Session(
                session,
                id,
                choice.date(),
                ((GivenLesson) lessons.getSelectedItem()).number(),
                reached.getText().strip(),
                remember.getText().strip());
        if (choice.id().isEmpty()) {
            edits.add(new SessionEdit.AddSession(written));
        } else if (!kept().equals(Optional.of(written))) {
            edits.add(new SessionEdit.ChangeSession(written));
        }
        for (Student student : group.students()) {
            Optional<Attendance> before = choice.id().flatMap(known -> group.attendance(known, student.id()));
            Optional<Attendance> now = table.mark(student.id());
            if (!before.equals(now)) {
                edits.add(new SessionEdit.MarkAttendance(id, session, List.of(student.id()), now));
            }
        }
        asking.close();
        if (!edits.isEmpty()) {
            desk.apply(new Several(WORDS.say("register-edit", DAY.format(choice.date())), edits));
        }
    }
}
