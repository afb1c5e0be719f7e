package roundwright.desktop;

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
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import roundwright.desktop.strip.StripPanel;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.EventThreadGuard;

/** Hands at the real window: opens it, presses keys, moves the pointer, and waits for what is to be seen. */
final class WindowDriver implements AutoCloseable {
    private static final int PATIENCE = 30_000;

    private final List<Throwable> misuses = new CopyOnWriteArrayList<>();
    private final Robot robot;
    private final JFrame frame;

    /** Opens the window over the folder of everything; the test is skipped where there is no display. */
    WindowDriver(Path home) throws AWTException {
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
        await(
                "the focus",
                () -> Stream.concat(Stream.of(frame), Stream.of(frame.getOwnedWindows()))
                        .filter(Window::isActive)
                        .findFirst());
    }

    /** Uses of the screen away from the event thread. */
    List<Throwable> misuses() {
        return misuses;
    }

    JFrame frame() {
        return frame;
    }

    @Override
    public void close() {
        try {
            EventQueue.invokeAndWait(frame::dispose);
            // the file is closed when the window has heard that it is closed
            EventQueue.invokeAndWait(() -> {});
        } catch (InterruptedException | InvocationTargetException failure) {
            throw new IllegalStateException(failure);
        }
        EventThreadGuard.remove();
    }

    MainPanel panel() {
        return (MainPanel) frame.getContentPane();
    }

    StripPanel strip() {
        return panel().strip();
    }

    Stream<Component> all() {
        return all(frame.getContentPane());
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container && component.isVisible()
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(WindowDriver::all))
                : own;
    }

    Optional<AbstractButton> button(String name) {
        return all().filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> String.valueOf(button.getAccessibleContext().getAccessibleName())
                        .startsWith(name))
                .findFirst();
    }

    /** A component of any kind that is told to begin so. */
    Optional<Component> named(String beginning) {
        return all().filter(component -> component.getAccessibleContext() != null)
                .filter(component -> String.valueOf(
                                component.getAccessibleContext().getAccessibleName())
                        .startsWith(beginning))
                .findFirst();
    }

    Optional<JTextComponent> text(String name) {
        return all().filter(JTextComponent.class::isInstance)
                .map(JTextComponent.class::cast)
                .filter(text -> name.equals(text.getAccessibleContext().getAccessibleName()) && text.isShowing())
                .findFirst();
    }

    void press(int key, boolean withControl) {
        pressWith(key, withControl ? new int[] {KeyEvent.VK_CONTROL} : new int[0]);
    }

    /** Presses a key while others are held. */
    void pressWith(int key, int... held) {
        for (int other : held) {
            robot.keyPress(other);
        }
        robot.keyPress(key);
        robot.keyRelease(key);
        for (int i = held.length - 1; i >= 0; i--) {
            robot.keyRelease(held[i]);
        }
        robot.waitForIdle();
    }

    void paste(String words) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(words), null);
        press(KeyEvent.VK_V, true);
    }

    void click(Component component) throws Exception {
        click(component, component.getWidth() / 2, component.getHeight() / 2);
    }

    /** Presses the pointer at a place of a component. */
    void click(Component component, int x, int y) throws Exception {
        drag(component, x, y, x, y);
    }

    /** Presses the pointer at one place of a component and lets go at another. */
    void drag(Component component, int fromX, int fromY, int toX, int toY) throws Exception {
        Point corner = onEventThread(component::getLocationOnScreen);
        robot.mouseMove(corner.x + fromX, corner.y + fromY);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        int steps = fromX == toX && fromY == toY ? 0 : 10;
        for (int step = 1; step <= steps; step++) {
            robot.mouseMove(
                    corner.x + fromX + (toX - fromX) * step / steps, corner.y + fromY + (toY - fromY) * step / steps);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    static <T> T onEventThread(Callable<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    /** Asks on the event thread until there is an answer. */
    static <T> T await(String what, Callable<Optional<T>> asked) {
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
