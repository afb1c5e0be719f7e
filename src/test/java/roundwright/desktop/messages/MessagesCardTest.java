package roundwright.desktop.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.text.Highlighter.Highlight;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Theme;
import roundwright.group.CountReport;
import roundwright.group.Group;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.NewCount;
import roundwright.workbook.StudentEdit;

@ExtendWith(OnEventThread.class)
class MessagesCardTest {
    private static final Wording WORDS = Wording.of("desktop");

    private DeskOnFile file;
    private Desk desk;
    private boolean closed;

    @BeforeEach
    void groupOfThree() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        Group group = new Group(
                desk.workbook().newGroup(), desk.choice().course().orElseThrow(), "Mondays", Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        List<Student> students = Stream.of("Oda", "Piet", "Inés")
                .map(name -> new Student(desk.workbook().newStudent(), name, false, false, ""))
                .toList();
        desk.apply(new StudentEdit.AddStudents(group.id(), students));
        desk.choosePlace(new RoundPlace("Tower", 7));
    }

    @AfterEach
    void close() {
        file.close();
    }

    private MessagesCard card(String text) {
        MessagesCard card = new MessagesCard(desk, new Asking() {
            @Override
            public void ask(Question asked) {
                throw new AssertionError("asks for more");
            }

            @Override
            public void close() {
                closed = true;
            }
        });
        card.paste(text);
        return card;
    }

    private static List<JCheckBox> boxes(MessagesCard card) {
        return Inside.all(card)
                .filter(JCheckBox.class::isInstance)
                .map(JCheckBox.class::cast)
                .toList();
    }

    private static void file(MessagesCard card) {
        Inside.all(card)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> WORDS.say("messages-answer").equals(button.getText()))
                .findFirst()
                .orElseThrow()
                .doClick();
    }

    private List<CountReport> reports(String name) {
        Student student = desk.students().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        return desk.reports(student.id());
    }

    private List<String> said(String name) {
        List<String> said = new ArrayList<>();
        for (CountReport report :
                reports(name).stream().filter(CountReport::stands).toList()) {
            said.add(report.kind() + " " + report.part() + " " + report.round() + "="
                    + (report.count().isPresent() ? report.count().getAsInt() : ""));
        }
        return said;
    }

    @Test
    void whatWasPulledBackIsFiledWithWhatWasThereBeforeAndAllInOneStep() {
        file(card("Oda: r7 was 43, then 42 after I pulled back\nPiet: r7 42\nInés: still on r7, 20 so far"));

        assertTrue(closed);
        assertEquals(List.of("COUNTED Tower 7=43", "PULLED_BACK Tower 7=42"), said("Oda"));
        assertEquals(List.of("COUNTED Tower 7=42"), said("Piet"));
        assertEquals(List.of("UNFINISHED Tower 7=20"), said("Inés"));
        assertEquals(Optional.of("Undo: 4 counts"), desk.workbook().undoName());
        desk.undo();
        assertEquals(Optional.empty(), desk.notice());
        assertEquals(List.of(), said("Oda"));
        assertEquals(List.of(), said("Piet"));
        assertEquals(List.of(), said("Inés"));
    }

    @Test
    void ofTwoCountsThatMayBeMeantNoneIsTickedAndOneCanBe() {
        MessagesCard card = card("Oda: r7 41 or 42, can't tell");

        List<JCheckBox> boxes = boxes(card);
        assertEquals(2, boxes.size());
        assertTrue(boxes.stream().noneMatch(AbstractButton::isSelected));
        boxes.get(0).doClick();
        boxes.get(1).doClick();
        assertFalse(boxes.get(0).isSelected());
        file(card);
        assertEquals(List.of("COUNTED Tower 7=42"), said("Oda"));
    }

    @Test
    void whatIsOnlySaidToBeRightDoesNotStandAgainstACount() {
        Student oda = desk.students().stream()
                .filter(student -> student.name().equals("Oda"))
                .findFirst()
                .orElseThrow();
        desk.apply(
                new CountEdit.ReportCounts(desk.choice().group().orElseThrow(), NewCount.of(oda.id(), "Tower", 3, 17)));

        file(card("Oda: tower all right up to round 4"));

        assertEquals(
                List.of("COUNTED Tower 3=17", "COUNTED Tower 1=6", "COUNTED Tower 2=12", "COUNTED Tower 4=24"),
                said("Oda"));
    }

    @Test
    void aMessageWithoutANameIsWhoseTheTeacherSaysItIs() {
        MessagesCard card = card("r7 42 and r8 41");
        assertEquals(List.of(), boxes(card));

        Inside.first(card, JComboBox.class).setSelectedItem("Piet");

        file(card);
        assertEquals(List.of("COUNTED Tower 7=42", "COUNTED Tower 8=41"), said("Piet"));
    }

    @Test
    void everythingReadIsMarkedInTheText() {
        String text = "Oda: r7 42, see you at 7\nPiet: 42\nInés: r99 40";
        MessagesCard card = card(text);

        Highlight[] marks = Inside.first(card, JTextArea.class).getHighlighter().getHighlights();
        List<String> marked = Arrays.stream(marks)
                .map(mark -> text.substring(mark.getStartOffset(), mark.getEndOffset()))
                .toList();
        assertEquals(List.of("r7 42", "42", "r99 40"), marked);
    }

    @Test
    void rubbishIsReadWithoutHarm() {
        MessagesCard card = card("\u0000\ud83d\n\u202er7 42\u202c (((" + "9".repeat(3000));

        file(card);

        assertFalse(closed);
        assertEquals(List.of(), said("Oda"));
    }
}
