package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.strip.StripPanel;
import roundwright.group.CountReport;
import roundwright.store.StoreException;
import roundwright.workbook.Workbook;

/** A teacher at the real window: makes a course, runs a lesson, looks at who is stuck, by key strokes and with the pointer. */
class TeacherWindowTest {
    private static final String PEBBLE = """
            # Pebble
            Rnd 1: 6 dc in magic ring (6)
            Rnd 2: inc x 6 (12)
            Rnd 3: (dc, inc) x 6 (18)
            Rnds 4-6: dc in each st around (18)
            Rnd 7: (dc, dec) x 6 (12)
            Rnd 8: dec x 6 (6)
            """;

    @TempDir
    private Path home;

    private WindowDriver hands;

    @BeforeEach
    void openTheWindow() throws Exception {
        hands = new WindowDriver(home);
    }

    @AfterEach
    void closeTheWindow() {
        if (hands != null) {
            hands.close();
        }
    }

    @Test
    void aTeacherMakesACourseRunsALessonAndSeesWhoIsStuck() throws Exception {
        WindowDriver.await("the samples", () -> hands.button("Open the sample Harbour light"));
        makeACourseFromAPattern();
        makeAGroup();
        typeCounts();
        lookAtTheOtherPages();
        chooseARoundWithThePointer();
        checkTheFile();
        assertEquals(List.of(), hands.misuses());
    }

    @Test
    void lessonsEdgesMoveAgainAndAgainAndAreTakenBackFromTheText() throws Exception {
        hands.click(WindowDriver.await("the samples", () -> hands.button("Open the sample Harbour light")));
        WindowDriver.await(
                "the course",
                () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Harbour light")));
        hands.press(KeyEvent.VK_E, true);
        JTextComponent text =
                WindowDriver.await("the text", () -> hands.text("Text of the course: pattern and lessons"));
        String before = text.getText();
        StripPanel strip = hands.strip();
        hands.click(strip, strip.getWidth() / 3, strip.getHeight() / 2);
        hands.pressWith(KeyEvent.VK_RIGHT, KeyEvent.VK_ALT);
        String once = WindowDriver.await(
                "an edge moved", () -> Optional.of(text.getText()).filter(now -> !now.equals(before)));
        assertTrue(strip.hasFocus());
        hands.pressWith(KeyEvent.VK_RIGHT, KeyEvent.VK_ALT);
        WindowDriver.await(
                "it moved again",
                () -> Optional.of(text.getText()).filter(now -> !now.equals(before) && !now.equals(once)));
        hands.click(text, 40, 8);
        assertTrue(text.hasFocus());
        hands.press(KeyEvent.VK_Z, true);
        awaitText(text, once);
        hands.press(KeyEvent.VK_Z, true);
        awaitText(text, before);
        hands.press(KeyEvent.VK_Y, true);
        awaitText(text, once);
        assertEquals(List.of(), hands.misuses());
    }

    private static void awaitText(JTextComponent text, String wanted) throws Exception {
        WindowDriver.await(
                "the text as it was", () -> Optional.of(text.getText()).filter(wanted::equals));
    }

    private void makeACourseFromAPattern() throws Exception {
        hands.press(KeyEvent.VK_N, true);
        WindowDriver.await("the card", () -> hands.text("Name of the course"));
        hands.paste(PEBBLE);
        hands.press(KeyEvent.VK_TAB, false);
        hands.paste("Pebble");
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await(
                "the course", () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Pebble")));
    }

    private void makeAGroup() throws Exception {
        hands.press(KeyEvent.VK_G, true);
        WindowDriver.await("the group's card", () -> hands.text("First session"));
        hands.paste("Tuesdays");
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("the group", () -> hands.button("Pebble, Tuesdays"));
        hands.press(KeyEvent.VK_J, true);
        WindowDriver.await("the names' card", () -> hands.text("Names, one a line"));
        hands.paste("Oda\nPiet\nRania");
        hands.press(KeyEvent.VK_ENTER, true);
        hands.press(KeyEvent.VK_2, true);
        WindowDriver.await(
                "the counts",
                () -> hands.all()
                        .filter(javax.swing.JTable.class::isInstance)
                        .filter(table -> table.hasFocus())
                        .findFirst());
    }

    private void typeCounts() throws Exception {
        for (int key :
                new int[] {KeyEvent.VK_6, KeyEvent.VK_ENTER, KeyEvent.VK_7, KeyEvent.VK_ENTER, KeyEvent.VK_EQUALS}) {
            hands.press(key, false);
        }
        WindowDriver.await(
                "round 2",
                () -> Optional.of(hands.strip().chosenInWords()).filter(words -> words.startsWith("Pebble, round 2")));
        hands.press(KeyEvent.VK_1, false);
        hands.press(KeyEvent.VK_2, false);
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("undo with its name", () -> hands.button("Undo: count of round 2 (Oda)"));
        hands.press(KeyEvent.VK_Z, true);
        WindowDriver.await("redo with its name", () -> hands.button("Redo: count of round 2 (Oda)"));
        hands.press(KeyEvent.VK_Y, true);
        WindowDriver.await("undo again", () -> hands.button("Undo: count of round 2 (Oda)"));
    }

    private void lookAtTheOtherPages() throws Exception {
        hands.press(KeyEvent.VK_3, true);
        WindowDriver.await(
                "who is stuck",
                () -> Optional.of(hands.panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("StuckPage")));
        hands.press(KeyEvent.VK_4, true);
        WindowDriver.await(
                "the student's page",
                () -> Optional.of(hands.panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("NextPage")));
        hands.press(KeyEvent.VK_F1, false);
        WindowDriver.await("the keys", () -> hands.button("Close"));
        hands.press(KeyEvent.VK_ESCAPE, false);
        WindowDriver.await("the page again", () -> Optional.of(hands.panel()).filter(panel -> !panel.asking()));
        hands.click(hands.button("Plan").orElseThrow());
        WindowDriver.await(
                "the plan",
                () -> Optional.of(hands.panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("PlanPage")));
    }

    private void chooseARoundWithThePointer() throws Exception {
        StripPanel strip = hands.strip();
        hands.click(strip, strip.getWidth() - 40, strip.getHeight() / 2);
        WindowDriver.await(
                "the last round",
                () -> Optional.of(strip.chosenInWords()).filter(words -> words.startsWith("Pebble, round 8")));
        hands.press(KeyEvent.VK_HOME, false);
        WindowDriver.await(
                "the first round",
                () -> Optional.of(strip.chosenInWords()).filter(words -> words.startsWith("Pebble, round 1")));
    }

    /** Everything is in the file already: it is read while the window still stands, from a copy of it. */
    private void checkTheFile() throws Exception {
        EventQueue.invokeAndWait(hands.frame()::dispose);
        Path file = home.resolve("data").resolve("courses.db");
        Workbook workbook = WindowDriver.await("the closed file", () -> opened(file));
        List<CountReport> reports = workbook.view().groups().get(0).reports().stream()
                .filter(CountReport::stands)
                .toList();
        assertEquals(
                List.of("1: 6", "1: 7", "1: 6", "2: 12"),
                reports.stream()
                        .map(report -> report.round() + ": " + report.count().getAsInt())
                        .toList());
        assertTrue(workbook.view().courses().get(0).text().contains("## Lesson 1"));
        workbook.close();
    }

    private Optional<Workbook> opened(Path file) {
        try {
            return Optional.of(Workbook.open(file, home.resolve("backups"), Clock.systemUTC()));
        } catch (StoreException stillOpen) {
            return Optional.empty();
        }
    }
}
