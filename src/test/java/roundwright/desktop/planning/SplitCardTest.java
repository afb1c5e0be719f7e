package roundwright.desktop.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.course.Lesson;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.Pictures;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;

class SplitCardTest {
    private DeskOnFile file;
    private Desk desk;
    private MainPanel panel;
    private SplitCard card;

    @BeforeEach
    void open() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        panel = Pictures.layOut(file.panel(), 1280, 800);
        ask();
    }

    @AfterEach
    void close() {
        file.close();
    }

    private void ask() {
        panel.deeds().perform(Deed.SPLIT);
        card = Inside.first(panel, SplitCard.class);
    }

    private JTextField field(String label) {
        return Inside.all(card)
                .filter(JTextField.class::isInstance)
                .map(JTextField.class::cast)
                .filter(field -> label.equals(field.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
    }

    private String said() {
        return Inside.all(card)
                .filter(Prose.class::isInstance)
                .map(prose -> ((Prose) prose).text())
                .collect(Collectors.joining("\n"));
    }

    private void enter() {
        KeyStroke enter = KeyStroke.getKeyStroke("ENTER");
        card.getActionMap()
                .get(card.getInputMap(javax.swing.JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                        .get(enter))
                .actionPerformed(null);
    }

    private List<Lesson> lessons() {
        return desk.course().orElseThrow().course().lessons();
    }

    @Test
    void theBestSplitIsShownBesideTheLessonsAsSoonAsTheCardIsOpen() {
        assertTrue(said().contains("Split anew: "), said());
        assertTrue(said().contains("As it is now: 8 lessons, "), said());
        assertTrue(said().contains("Or "), said());
    }

    @Test
    void enterTakesWhatIsShownAndUndoNamesIt() {
        field("Number of lessons").setText("6");
        assertTrue(said().contains("Split anew: 6 lessons"), said());
        assertTrue(said().contains("Or 7 lessons"), said());
        enter();
        assertEquals(6, lessons().size());
        assertEquals(Optional.of("Undo: 6 lessons split anew"), desk.workbook().undoName());
        desk.undo();
        assertEquals(8, lessons().size());
    }

    @Test
    void theTeachersWordsGoWithTheirRounds() {
        List<String> before = lessons().stream()
                .flatMap(lesson -> lesson.words("bring").stream())
                .toList();
        field("Number of lessons").setText("5");
        enter();
        List<String> after = lessons().stream()
                .flatMap(lesson -> lesson.words("bring").stream())
                .toList();
        assertEquals(before, after);
    }

    @Test
    void minutesAndPaceAreWrittenIntoTheCourse() {
        field("Minutes of a session").setText("75");
        field("Pace, stitches a minute").setText("6.5");
        enter();
        String text = desk.course().orElseThrow().kept().text();
        assertTrue(text.contains("- session: 75 minutes") && text.contains("- pace: 6.5 stitches a minute"), text);
    }

    @Test
    void aLockedLessonKeepsItsRounds() {
        Lesson locked = lessons().get(2);
        desk.choosePlace(new roundwright.group.RoundPlace("Tower", 12));
        new LessonsByHand(desk, new ChosenLesson(desk)).lock();
        panel = Pictures.layOut(file.panel(), 1280, 800);
        ask();
        field("Minutes of a session").setText("60");
        enter();
        assertTrue(lessons().stream()
                .anyMatch(lesson -> lesson.locked() && lesson.rounds().equals(locked.rounds())));
    }

    @Test
    void whatIsNoNumberIsRefusedInWords() {
        field("Minutes of a session").setText("soon");
        assertTrue(said().contains("Write a number of minutes from 20 to 600."), said());
        assertFalse(Inside.all(card)
                .filter(JButton.class::isInstance)
                .map(JButton.class::cast)
                .filter(button -> button.getText().equals("Take these lessons"))
                .findFirst()
                .orElseThrow()
                .isEnabled());
        enter();
        assertEquals(8, lessons().size());
        field("Minutes of a session").setText("90");
        assertFalse(said().contains("Write a number"), said());
    }
}
