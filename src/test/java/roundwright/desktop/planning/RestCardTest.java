package roundwright.desktop.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JTextField;
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

class RestCardTest {
    private DeskOnFile file;
    private Desk desk;
    private RestCard card;

    @BeforeEach
    void open() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light").group(6);
        desk = file.desk();
        MainPanel panel = Pictures.layOut(file.panel(), 1280, 800);
        panel.deeds().perform(Deed.PLAN_REST);
        card = Inside.first(panel, RestCard.class);
    }

    @AfterEach
    void close() {
        file.close();
    }

    private String said() {
        return Inside.all(card)
                .filter(Prose.class::isInstance)
                .map(prose -> ((Prose) prose).text())
                .collect(Collectors.joining("\n"));
    }

    private JButton button(String words) {
        return Inside.all(card)
                .filter(JButton.class::isInstance)
                .map(JButton.class::cast)
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private List<Lesson> lessons() {
        return desk.course().orElseThrow().course().lessons();
    }

    @Test
    void itSaysWhereTheGroupIsWhatChangesAndWhenEachFinishes() {
        assertTrue(said().contains("The group is at Tower "), said());
        assertTrue(said().contains("Lesson 5 · "), said());
        for (var student : desk.students()) {
            assertTrue(
                    said().lines().anyMatch(line -> line.startsWith(student.name() + ": ")),
                    student.name() + " has no date in\n" + said());
        }
    }

    @Test
    void takingItKeepsWhatWasDoneAndIsUndoneInOneStep() {
        List<Lesson> before = lessons();
        int held = new LessonDates(desk).lastHeld().orElseThrow().lesson().orElseThrow();
        Inside.first(card, JTextField.class).setText("5");
        button("Take this plan").doClick();
        assertEquals(held + 5, lessons().size(), lessons().toString());
        assertEquals(before.subList(0, held - 1), lessons().subList(0, held - 1));
        assertTrue(desk.workbook().undoName().orElse("").startsWith("Undo: rest of the course planned for"));
        desk.undo();
        assertEquals(before, lessons());
    }

    @Test
    void aNumberOfLessonsThatIsNoneIsRefused() {
        Inside.first(card, JTextField.class).setText("many");
        assertTrue(said().contains("Write a number of lessons"), said());
        assertEquals(Optional.of(false), Optional.of(button("Take this plan").isEnabled()));
    }
}
