package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JDialog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.look.Prose;
import roundwright.desktop.window.MainPanel;

/** The program is started on a damaged file: the person chooses by keyboard what is done, and goes on. */
class DamagedFileWindowTest {
    private static final int PAGE = 4096;

    @TempDir
    private Path home;

    @Test
    void whatCanBeReadIsSavedAndOpened() throws Exception {
        byte[] damaged = damagedFile();
        try (WindowDriver window = new WindowDriver(home)) {
            WindowDriver.await(
                    "the question", () -> dialog().filter(asked -> says(asked, "No backup of it is whole.")));
            window.press(KeyEvent.VK_ENTER, false);
            WindowDriver.await("what was saved", () -> dialog().filter(told -> says(told, "is kept as")));
            window.press(KeyEvent.VK_ENTER, false);
            WindowDriver.await(
                    "the page",
                    () -> Optional.of(window.frame().getContentPane()).filter(MainPanel.class::isInstance));
            assertEquals(List.of(), window.misuses());
        }
        try (Stream<Path> files = Files.walk(home)) {
            Path kept = files.filter(file -> file.getFileName().toString().contains(".damaged-"))
                    .findFirst()
                    .orElseThrow();
            assertArrayEquals(damaged, Files.readAllBytes(kept));
        }
    }

    @Test
    void aFileThatIsLeftStaysAsItIsAndTheWindowGoes() throws Exception {
        byte[] damaged = damagedFile();
        try (WindowDriver window = new WindowDriver(home)) {
            WindowDriver.await(
                    "the question", () -> dialog().filter(asked -> says(asked, "No backup of it is whole.")));
            window.press(KeyEvent.VK_ESCAPE, false);
            WindowDriver.await("no window", () -> Optional.of(window.frame()).filter(frame -> !frame.isShowing()));
        }
        assertArrayEquals(damaged, Files.readAllBytes(file()));
    }

    @Test
    void whatIsNoFileOfTheProgramIsToldAndLeft() throws Exception {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), "Rnd 1: 6 sc in magic ring (6)\n".repeat(200));
        try (WindowDriver window = new WindowDriver(home)) {
            JDialog told = WindowDriver.await("the reason", () -> dialog());
            assertTrue(says(told, "could not be opened"), "says that it stays closed");
            window.press(KeyEvent.VK_ENTER, false);
            WindowDriver.await("no window", () -> Optional.of(window.frame()).filter(frame -> !frame.isShowing()));
        }
        assertEquals(30 * 200, Files.size(file()));
    }

    private Path file() {
        return home.resolve("data").resolve("courses.db");
    }

    /** A file with a course, of which one page was overwritten. */
    private byte[] damagedFile() throws Exception {
        Files.createDirectories(file().getParent());
        try (DeskOnFile desk = new DeskOnFile()) {
            FutureTask<Void> fill =
                    new FutureTask<>(() -> desk.course("harbour-light").group(8), null);
            EventQueue.invokeAndWait(fill);
            fill.get();
            desk.desk().workbook().copyTo(file());
        }
        byte[] bytes = Files.readAllBytes(file());
        java.util.Arrays.fill(bytes, bytes.length - 3 * PAGE, bytes.length - 2 * PAGE, (byte) 0x33);
        Files.write(file(), bytes);
        return bytes;
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(window -> window instanceof JDialog && window.isShowing() && window.isFocused())
                .map(JDialog.class::cast)
                .findFirst();
    }

    private static boolean says(JDialog dialog, String words) {
        return Inside.all(dialog)
                .filter(Prose.class::isInstance)
                .anyMatch(prose -> ((Prose) prose).text().contains(words));
    }
}
