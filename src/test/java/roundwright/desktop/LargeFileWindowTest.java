package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.work.PauseWatch;

/** A teacher of 500 students at the real window: whatever is done, the window answers. */
class LargeFileWindowTest {
    private static final String PEBBLE = "# Pebble\nRnd 1: 6 dc in magic ring (6)\nRnd 2: inc x 6 (12)\n"
            + "Rnd 3: (dc, inc) x 6 (18)\nRnds 4-6: dc in each st around (18)\nRnd 7: (dc, dec) x 6 (12)\n";

    @TempDir
    private Path home;

    private final SlowEvents slow = new SlowEvents(PauseWatch.LONGEST);
    private WindowDriver hands;

    /** Stays as the queue after the test, with nothing to tell. */
    @BeforeEach
    void openTheWindow() throws Exception {
        assumeFalse(GraphicsEnvironment.isHeadless(), "skipped: there is no display to open a window on");
        try (DeskOnFile file = new DeskOnFile()) {
            java.awt.EventQueue.invokeAndWait(() -> LargeFile.fill(file));
            Files.createDirectories(home.resolve("data"));
            Files.copy(file.path(), home.resolve("data").resolve("courses.db"));
        }
        slow.doing("opening");
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(slow);
        hands = new WindowDriver(home);
    }

    @AfterEach
    void closeTheWindow() {
        if (hands != null) {
            hands.close();
        }
    }

    @Test
    void nothingThatATeacherDoesMakesTheWindowWait() throws Exception {
        WindowDriver.await(
                "the course", () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Tall")));
        Thread.sleep(3000);
        typeCounts();
        lookAtEveryPage();
        moveALesson();
        chooseRounds();
        find();
        makeACourse();
        assertEquals("", String.join("\n", slow.found()));
    }

    private void typeCounts() throws Exception {
        slow.doing("counts");
        hands.press(KeyEvent.VK_2, true);
        WindowDriver.await(
                "the counts",
                () -> hands.all()
                        .filter(javax.swing.JTable.class::isInstance)
                        .filter(table -> table.hasFocus())
                        .findFirst());
        Thread.sleep(2000);
        slow.doing("typing counts");
        for (int student = 0; student < 12; student++) {
            hands.press(KeyEvent.VK_3, false);
            hands.press(student % 4 == 0 ? KeyEvent.VK_1 : KeyEvent.VK_0, false);
            hands.press(KeyEvent.VK_ENTER, false);
        }
        slow.doing("undo");
        hands.press(KeyEvent.VK_Z, true);
        Thread.sleep(500);
        hands.press(KeyEvent.VK_Y, true);
        Thread.sleep(1500);
        slow.doing("moving in the counts");
        for (int key : new int[] {KeyEvent.VK_UP, KeyEvent.VK_LEFT, KeyEvent.VK_DOWN, KeyEvent.VK_PAGE_DOWN}) {
            hands.press(key, false);
            Thread.sleep(200);
        }
        slow.doing("register");
        hands.press(KeyEvent.VK_R, true);
        Thread.sleep(700);
        hands.press(KeyEvent.VK_ESCAPE, false);
    }

    private void lookAtEveryPage() throws Exception {
        for (int round = 0; round < 2; round++) {
            for (int page : new int[] {KeyEvent.VK_3, KeyEvent.VK_4, KeyEvent.VK_1, KeyEvent.VK_2}) {
                slow.doing("page " + KeyEvent.getKeyText(page) + " time " + (round + 1));
                hands.press(page, true);
                Thread.sleep(1500);
            }
        }
        slow.doing("next student");
        hands.press(KeyEvent.VK_4, true);
        hands.press(KeyEvent.VK_PERIOD, true);
        Thread.sleep(400);
        slow.doing("hide names");
        hands.press(KeyEvent.VK_H, true);
        Thread.sleep(400);
        hands.press(KeyEvent.VK_H, true);
    }

    private void moveALesson() throws Exception {
        slow.doing("page 1 before a lesson moves");
        hands.press(KeyEvent.VK_1, true);
        Thread.sleep(600);
        slow.doing("a lesson moves");
        hands.pressWith(KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        Thread.sleep(2500);
        hands.press(KeyEvent.VK_Z, true);
        Thread.sleep(2500);
    }

    private void chooseRounds() throws Exception {
        slow.doing("choosing rounds");
        var strip = hands.strip();
        hands.click(strip, strip.getWidth() / 2, strip.getHeight() / 2);
        for (int step = 0; step < 10; step++) {
            hands.press(KeyEvent.VK_RIGHT, false);
        }
        Thread.sleep(500);
    }

    private void find() throws Exception {
        slow.doing("finding");
        hands.press(KeyEvent.VK_F, true);
        Thread.sleep(300);
        hands.paste("seat 43");
        Thread.sleep(600);
        hands.press(KeyEvent.VK_ENTER, false);
        Thread.sleep(1000);
    }

    private void makeACourse() throws Exception {
        slow.doing("a new course");
        hands.press(KeyEvent.VK_N, true);
        WindowDriver.await("the card", () -> hands.text("Name of the course"));
        hands.paste(PEBBLE);
        hands.press(KeyEvent.VK_TAB, false);
        hands.paste("Pebble");
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await(
                "the course", () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Pebble")));
        Thread.sleep(1000);
    }
}
