package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.strip.StripPanel;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.EventThreadGuard;
import roundwright.group.CountReport;
import roundwright.store.StoreException;
import roundwright.workbook.Workbook;

/** A teacher at the real window: makes a course, runs a lesson, looks at who is stuck, by key strokes and with the pointer. */
class TeacherWindowTest {
    private static final int PATIENCE = 30_000;
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

    private final List<Throwable> misuses = new CopyOnWriteArrayList<>();
    private Robot robot;
    private JFrame frame;

    @BeforeEach
    void openTheWindow() throws AWTException {
        assumeFalse(GraphicsEnvironment.isHeadless(), "skipped: there is no display to open a window on");
        robot = new Robot();
        robot.setAutoDelay(15);
        EventThreadGuard.install(misuses::add);
        Desktop.open(new DesktopArguments(Optional.empty(), Optional.of(home), false));
        frame = await(
                "the window",
                () -> Stream.of(Window.getWindows())
                        .filter(window -> window instanceof JFrame && window.isShowing())
                        .map(JFrame.class::cast)
                        .findFirst());
        await("the focus", () -> Optional.ofNullable(frame.isActive() ? frame : null));
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        if (frame != null) {
            EventQueue.invokeAndWait(frame::dispose);
            EventThreadGuard.remove();
        }
    }

    @Test
    void aTeacherMakesACourseRunsALessonAndSeesWhoIsStuck() throws Exception {
        await("the samples", () -> button("Open the sample Harbour light"));
        makeACourseFromAPattern();
        makeAGroup();
        typeCounts();
        lookAtTheOtherPages();
        chooseARoundWithThePointer();
        checkTheFile();
        assertEquals(List.of(), misuses);
    }

    private void makeACourseFromAPattern() throws Exception {
        press(KeyEvent.VK_N, true);
        await("the card", () -> text("Name of the course"));
        paste("Pebble");
        press(KeyEvent.VK_TAB, false);
        paste(PEBBLE);
        press(KeyEvent.VK_TAB, false);
        press(KeyEvent.VK_ENTER, false);
        await("the course", () -> Optional.of(frame.getTitle()).filter(title -> title.startsWith("Pebble")));
    }

    private void makeAGroup() throws Exception {
        press(KeyEvent.VK_G, true);
        await("the group's card", () -> text("First session"));
        paste("Tuesdays");
        press(KeyEvent.VK_ENTER, false);
        await("the group", () -> button("Pebble, Tuesdays"));
        press(KeyEvent.VK_J, true);
        await("the names' card", () -> text("Names, one a line"));
        paste("Oda\nPiet\nRania");
        robot.keyPress(KeyEvent.VK_CONTROL);
        press(KeyEvent.VK_ENTER, false);
        robot.keyRelease(KeyEvent.VK_CONTROL);
        press(KeyEvent.VK_2, true);
        await(
                "the counts",
                () -> all().filter(javax.swing.JTable.class::isInstance)
                        .filter(table -> table.hasFocus())
                        .findFirst());
    }

    private void typeCounts() throws Exception {
        for (int key :
                new int[] {KeyEvent.VK_6, KeyEvent.VK_ENTER, KeyEvent.VK_7, KeyEvent.VK_ENTER, KeyEvent.VK_EQUALS}) {
            press(key, false);
        }
        await(
                "round 2",
                () -> Optional.of(strip().chosenInWords()).filter(words -> words.startsWith("Pebble, round 2")));
        press(KeyEvent.VK_1, false);
        press(KeyEvent.VK_2, false);
        press(KeyEvent.VK_ENTER, false);
        await("undo with its name", () -> button("Undo: count of round 2 (Oda)"));
        press(KeyEvent.VK_Z, true);
        await("redo with its name", () -> button("Redo: count of round 2 (Oda)"));
        press(KeyEvent.VK_Y, true);
        await("undo again", () -> button("Undo: count of round 2 (Oda)"));
    }

    private void lookAtTheOtherPages() throws Exception {
        press(KeyEvent.VK_3, true);
        await(
                "who is stuck",
                () -> Optional.of(panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("StuckPage")));
        press(KeyEvent.VK_4, true);
        await(
                "the student's page",
                () -> Optional.of(panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("NextPage")));
        press(KeyEvent.VK_F1, false);
        await("the keys", () -> button("Close"));
        press(KeyEvent.VK_ESCAPE, false);
        await("the page again", () -> Optional.of(button("Close")).filter(Optional::isEmpty));
        click(button("Plan").orElseThrow());
        await(
                "the plan",
                () -> Optional.of(panel().shownPage())
                        .filter(page -> page.getClass().getSimpleName().equals("PlanPage")));
    }

    private void chooseARoundWithThePointer() throws Exception {
        StripPanel strip = strip();
        Point corner = onEventThread(strip::getLocationOnScreen);
        robot.mouseMove(corner.x + strip.getWidth() - 40, corner.y + strip.getHeight() / 2);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        await(
                "the last round",
                () -> Optional.of(strip.chosenInWords()).filter(words -> words.startsWith("Pebble, round 8")));
        press(KeyEvent.VK_HOME, false);
        await(
                "the first round",
                () -> Optional.of(strip.chosenInWords()).filter(words -> words.startsWith("Pebble, round 1")));
    }

    /** Everything is in the file already: it is read while the window still stands, from a copy of it. */
    private void checkTheFile() throws Exception {
        EventQueue.invokeAndWait(frame::dispose);
        Path file = home.resolve("data").resolve("courses.db");
        Workbook workbook = await("the closed file", () -> opened(file));
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

    private MainPanel panel() {
        return (MainPanel) frame.getContentPane();
    }

    private StripPanel strip() {
        return panel().strip();
    }

    private Stream<Component> all() {
        return all(frame.getContentPane());
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container && component.isVisible()
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(TeacherWindowTest::all))
                : own;
    }

    private Optional<AbstractButton> button(String name) {
        return all().filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> String.valueOf(button.getAccessibleContext().getAccessibleName())
                        .startsWith(name))
                .findFirst();
    }

    private Optional<JTextComponent> text(String name) {
        return all().filter(JTextComponent.class::isInstance)
                .map(JTextComponent.class::cast)
                .filter(text -> name.equals(text.getAccessibleContext().getAccessibleName()) && text.isShowing())
                .findFirst();
    }

    private void press(int key, boolean withControl) {
        if (withControl) {
            robot.keyPress(KeyEvent.VK_CONTROL);
        }
        robot.keyPress(key);
        robot.keyRelease(key);
        if (withControl) {
            robot.keyRelease(KeyEvent.VK_CONTROL);
        }
        robot.waitForIdle();
    }

    private void paste(String words) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(words), null);
        press(KeyEvent.VK_V, true);
    }

    private void click(Component component) throws Exception {
        Point corner = onEventThread(component::getLocationOnScreen);
        robot.mouseMove(corner.x + component.getWidth() / 2, corner.y + component.getHeight() / 2);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    private static <T> T onEventThread(Callable<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    /** Asks on the event thread until there is an answer. */
    private static <T> T await(String what, Callable<Optional<T>> asked) {
        long until = System.currentTimeMillis() + PATIENCE;
        while (System.currentTimeMillis() < until) {
            try {
                Optional<T> found = onEventThread(asked);
                if (found.isPresent()) {
                    return found.get();
                }
                Thread.sleep(40);
            } catch (InterruptedException | InvocationTargetException failure) {
                throw new IllegalStateException(failure);
            } catch (Exception failure) {
                throw new IllegalStateException("while waiting for " + what, failure);
            }
        }
        throw new AssertionError("waited in vain for " + what);
    }
}
