package roundwright.desktop.ask;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComboBox;
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
import roundwright.wording.Wording;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupView;
import roundwright.workbook.SessionEdit;
import roundwright.workbook.Several;

/** The register of one session: who is there, late, absent, who has caught up. A session of today is made where there is none. */
public final class RegisterCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);

    /** A session to be marked; it may not be in the file yet. */
    private record Choice(Optional<SessionId> id, LocalDate date, OptionalInt lesson) {
        @Override
        public String toString() {
            String day = DAY.format(date);
            return lesson.isPresent() ? WORDS.say("session-named", day, lesson.getAsInt()) : day;
        }
    }

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient GroupView group;
    private final JComboBox<Choice> sessions = new JComboBox<>();
    private final RegisterTable table;

    public RegisterCard(Desk desk, Asking asking) {
        super(WORDS.say("register-head"), 560);
        this.desk = desk;
        this.asking = asking;
        this.group = desk.group().orElseThrow();
        choices().forEach(sessions::addItem);
        row(WORDS.say("session"), sessions, "");
        table = new RegisterTable(group.students(), student -> Names.of(student, desk));
        body().below(2, Prose.muted(WORDS.say("register-keys")));
        body().below(1, table);
        first(table);
        sessions.addActionListener(event -> showMarks());
        showMarks();
        answer(WORDS.say("keep"), this::keep);
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
                .flatMapToInt(session -> session.lesson().stream())
                .max()
                .orElse(0);
        return desk.course().flatMap(course -> course.lesson(last + 1)).map(Lesson::number);
    }

    private Choice chosen() {
        return (Choice) sessions.getSelectedItem();
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
        if (choice.id().isEmpty()) {
            edits.add(new SessionEdit.AddSession(new Session(session, id, choice.date(), choice.lesson(), "", "")));
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
