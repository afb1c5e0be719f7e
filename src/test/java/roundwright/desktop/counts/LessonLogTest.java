package roundwright.desktop.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.ask.RegisterCard;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Theme;
import roundwright.group.Attendance;
import roundwright.group.Group;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.SessionEdit;
import roundwright.workbook.StudentEdit;

@ExtendWith(OnEventThread.class)
class LessonLogTest {
    private static final Asking NOBODY = new Asking() {
        @Override
        public void ask(Question card) {
            // a card is looked at without a window here
        }

        @Override
        public void close() {
            // nothing lies over the page
        }
    };

    private DeskOnFile file;
    private Desk desk;
    private Group group;

    @BeforeEach
    void groupThatMetLastWeekAndWillNextWeek() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        group = new Group(
                desk.workbook().newGroup(), desk.choice().course().orElseThrow(), "Mondays", Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        desk.apply(new StudentEdit.AddStudents(group.id(), List.of(student("Oda"), student("Piet"))));
        session(desk.today().minusWeeks(1), 1, "The base is closed.", "Bring rings for Piet.");
        session(desk.today().plusWeeks(1), 3, "", "");
    }

    private Student student(String name) {
        return new Student(desk.workbook().newStudent(), name, false, false, "");
    }

    private void session(LocalDate date, int lesson, String reached, String remember) {
        desk.apply(new SessionEdit.AddSession(new Session(
                desk.workbook().newSession(), group.id(), date, OptionalInt.of(lesson), reached, remember)));
    }

    @AfterEach
    void close() {
        file.close();
    }

    private static JTextComponent text(Component card, String name) {
        return Inside.all(card)
                .filter(JTextComponent.class::isInstance)
                .map(JTextComponent.class::cast)
                .filter(field -> name.equals(field.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
    }

    private static void press(Component card, String words) {
        Inside.all(card)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> words.equals(button.getText()))
                .findFirst()
                .orElseThrow()
                .doClick();
    }

    private Session today() {
        return desk.group().orElseThrow().sessions().stream()
                .filter(session -> session.date().equals(desk.today()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatWasWrittenLastTimeIsShownAndTodayIsWrittenInOneStep() {
        RegisterCard card = new RegisterCard(desk, NOBODY);
        String told = Inside.all(card)
                .filter(Prose.class::isInstance)
                .map(prose -> ((Prose) prose).text())
                .reduce("", String::concat);
        assertTrue(told.contains("The base is closed.") && told.contains("Bring rings for Piet."), told);
        press(card, "The others are there");
        text(card, "What was reached").setText("Round 9");
        text(card, "To remember next time").setText("Show decrease again");
        press(card, "Keep");
        assertEquals("Round 9", today().reached());
        assertEquals("Show decrease again", today().remember());
        desk.students()
                .forEach(student -> assertEquals(
                        Optional.of(Attendance.THERE),
                        desk.group().orElseThrow().attendance(today().id(), student.id())));
        desk.undo();
        assertEquals(2, desk.group().orElseThrow().sessions().size());
    }

    @Test
    void theLessonThatIsGivenCanBePutRight() {
        RegisterCard card = new RegisterCard(desk, NOBODY);
        press(card, "Keep");
        assertEquals(OptionalInt.of(2), today().lesson());
        JComboBox<?> lessons = Inside.all(card = new RegisterCard(desk, NOBODY))
                .filter(JComboBox.class::isInstance)
                .map(box -> (JComboBox<?>) box)
                .filter(box -> "What is given".equals(box.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
        lessons.setSelectedIndex(4);
        press(card, "Keep");
        assertEquals(OptionalInt.of(4), today().lesson());
    }

    @Test
    void theCountsPageRemindsUntilTheNextSessionIsPastAndHoldsBackWhileNamesAreHidden() {
        CountsPresenter presenter = new CountsPresenter(desk);
        assertTrue(presenter.fromLastTime().contains("Bring rings for Piet."), presenter.fromLastTime());
        desk.hideNames(true);
        assertEquals("", presenter.fromLastTime());
        desk.hideNames(false);
        session(desk.today().minusDays(1), 2, "", "");
        assertEquals("", presenter.fromLastTime());
    }
}
