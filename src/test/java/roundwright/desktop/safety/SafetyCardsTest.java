package roundwright.desktop.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Container;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.action.Deed;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;
import roundwright.group.Student;
import roundwright.store.StoreException;

/** Backups and erasing as the teacher meets them: what is said before, what is done, what is said after. */
@ExtendWith(OnEventThread.class)
class SafetyCardsTest {
    @BeforeEach
    void light() {
        Theme.LIGHT.install(1);
    }

    @Test
    void goingBackIsShownBeforeItIsDoneAndCanBeGoneForwardFrom() throws StoreException {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = file.course("harbour-light").group(5).panel();
            file.desk().workbook().backUp();
            Student student = file.desk().students().get(1);
            file.desk().chooseStudent(student.id());
            file.desk().workbook().erase(student.id(), false);
            assertEquals(4, file.desk().students().size());
            panel.deeds().perform(Deed.BACKUPS);
            assertTrue(said(panel).contains("Students who come back: " + student.name()), said(panel));
            press(panel, "Go back to this backup");
            assertEquals(5, file.desk().students().size());
            assertTrue(file.desk().notice().orElse("").contains("is itself a backup now"));
            assertEquals(2, file.desk().workbook().backups().size());
            panel.deeds().perform(Deed.BACKUPS);
            assertTrue(said(panel).contains("Students who go: " + student.name()), said(panel));
        }
    }

    @Test
    void withoutABackupNothingCanBeGoneBackToAndOneCanBeMade() throws StoreException {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = file.course("harbour-light").group(3).panel();
            panel.deeds().perform(Deed.BACKUPS);
            assertTrue(said(panel).contains("There is no backup yet"), said(panel));
            assertFalse(button(panel, "Go back to this backup").isEnabled());
            press(panel, "Make a backup now");
            assertEquals(1, file.desk().workbook().backups().size());
            assertTrue(said(panel).contains("Nothing would change"), said(panel));
            assertFalse(button(panel, "Go back to this backup").isEnabled());
        }
    }

    @Test
    void enterKeepsAStudentAndErasingIsToldExactly() throws StoreException {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = file.course("harbour-light").group(4).panel();
            file.desk().workbook().backUp();
            Student student = file.desk().students().get(2);
            file.desk().chooseStudent(student.id());
            panel.deeds().perform(Deed.ERASE_STUDENT);
            press(panel, "Keep");
            assertEquals(4, file.desk().students().size());
            panel.deeds().perform(Deed.ERASE_STUDENT);
            assertTrue(Inside.all(panel)
                    .filter(JCheckBox.class::isInstance)
                    .allMatch(box -> ((JCheckBox) box).isSelected()));
            press(panel, "Erase for good");
            assertEquals(3, file.desk().students().size());
            String told = file.desk().notice().orElse("");
            assertTrue(told.startsWith(student.name() + " has been erased"), told);
            assertTrue(told.contains("Backups from which they were erased: 1."), told);
            assertTrue(file.desk().workbook().undoName().isEmpty());
        }
    }

    @Test
    void detailsOfTheUnforeseenNameNobody() {
        RuntimeException failure = new IllegalStateException("Ines", new IllegalArgumentException("Bram, 18"));
        TroubleCard card = new TroubleCard(Details.of(failure), () -> {}, () -> {});
        String details = Inside.all(card)
                .filter(JTextArea.class::isInstance)
                .map(area -> ((JTextArea) area).getText())
                .findFirst()
                .orElseThrow();
        assertTrue(details.contains("java.lang.IllegalArgumentException\n  roundwright.desktop.safety"), details);
        assertFalse(details.contains("Ines") || details.contains("Bram"), details);
    }

    private static String said(Container root) {
        List<String> said = Inside.all(root)
                .filter(Prose.class::isInstance)
                .map(prose -> ((Prose) prose).text())
                .toList();
        return String.join("\n", said);
    }

    private static void press(Container root, String words) {
        button(root, words).doClick();
    }

    private static AbstractButton button(Container root, String words) {
        return Inside.all(root)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> words.equals(button.getText()))
                .findFirst()
                .orElseThrow();
    }
}
