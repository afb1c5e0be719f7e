package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.window.MainPanel;

/** Something goes wrong that nobody foresaw, in the real window: it is told, the work is there, and the program goes on. */
class TroubleWindowTest {
    private static final int PATIENCE = 30_000;
    private static final String NAME = "Xanthippe Quorlow";

    @TempDir
    private Path home;

    private Thread.UncaughtExceptionHandler before;
    private JFrame frame;

    @BeforeEach
    void openTheWindow() throws Exception {
        assumeFalse(GraphicsEnvironment.isHeadless(), "skipped: there is no display to open a window on");
        before = Thread.getDefaultUncaughtExceptionHandler();
        Desktop.open(new DesktopArguments(Optional.empty(), Optional.of(home), true));
        frame = await(
                "the course",
                () -> windows(JFrame.class)
                        .filter(window -> window.getTitle().startsWith("Harbour light"))
                        .findFirst());
    }

    @AfterEach
    void closeTheWindow() throws Exception {
        Thread.setDefaultUncaughtExceptionHandler(before);
        if (frame != null) {
            EventQueue.invokeAndWait(frame::dispose);
            // the file is closed when the window has heard that it is closed
            EventQueue.invokeAndWait(() -> {});
        }
    }

    @Test
    void whatNobodyForesawIsToldAndTheProgramGoesOn() throws Exception {
        SwingUtilities.invokeLater(() -> {
            throw new IllegalStateException("the counts of " + NAME);
        });
        JDialog dialog = await("the dialog", () -> windows(JDialog.class).findFirst());
        String details = all(dialog)
                .filter(JTextArea.class::isInstance)
                .map(area -> ((JTextArea) area).getText())
                .findFirst()
                .orElseThrow();
        assertTrue(details.contains("java.lang.IllegalStateException"), details);
        assertTrue(details.contains("TroubleWindowTest"), details);
        assertFalse(details.contains("Xanthippe"), details);
        press(dialog, "Go on");
        await("no dialog", () -> Optional.of(dialog).filter(shown -> !shown.isShowing()));
        assertTrue(frame.isShowing());
    }

    @Test
    void theWindowCanBeOpenedAnewOverTheSameFile() throws Exception {
        Component panel = onEventThread(frame::getContentPane);
        Thread failing = new Thread(() -> {
            throw new StackOverflowError();
        });
        failing.start();
        JDialog dialog = await("the dialog", () -> windows(JDialog.class).findFirst());
        press(dialog, "Open the window anew");
        MainPanel fresh = await(
                "another panel",
                () -> Optional.of(frame.getContentPane())
                        .filter(content -> content != panel)
                        .map(MainPanel.class::cast));
        await("the course again", () -> Optional.of(frame.getTitle()).filter(title -> title.startsWith("Harbour")));
        assertTrue(fresh.isShowing());
        assertEquals(0, onEventThread(() -> windows(JDialog.class).count()));
    }

    private static void press(Container root, String name) throws Exception {
        AbstractButton button = all(root)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(each -> name.equals(each.getText()))
                .findFirst()
                .orElseThrow();
        EventQueue.invokeAndWait(button::doClick);
    }

    private static <W extends Window> Stream<W> windows(Class<W> kind) {
        return Stream.of(Window.getWindows())
                .filter(window -> kind.isInstance(window) && window.isShowing())
                .map(kind::cast);
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(TroubleWindowTest::all))
                : own;
    }

    private static <T> T onEventThread(Callable<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    private static <T> T await(String what, Callable<Optional<T>> asked) throws Exception {
        long until = System.currentTimeMillis() + PATIENCE;
        while (System.currentTimeMillis() < until) {
            Optional<T> found = onEventThread(asked);
            if (found.isPresent()) {
                return found.get();
            }
            Thread.sleep(40);
        }
        throw new AssertionError("waited in vain for " + what);
    }
}
