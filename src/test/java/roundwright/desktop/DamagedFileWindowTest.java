package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JFrame;
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
            WindowDriver.await("the question", () -> saying(window, "No backup of it is whole."));
            window.press(KeyEvent.VK_ENTER, false);
            WindowDriver.await("what was saved", () -> saying(window, "is kept as"));
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
            WindowDriver.await("the question", () -> saying(window, "No backup of it is whole."));
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
            WindowDriver.await("the reason", () -> saying(window, "could not be opened"));
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

    /** The window, once it says this and takes keys. */
    private static Optional<JFrame> saying(WindowDriver window, String words) {
        boolean said = Inside.all(window.frame().getContentPane())
                .filter(Prose.class::isInstance)
                .anyMatch(prose -> ((Prose) prose).text().contains(words));
        return Optional.of(window.frame()).filter(frame -> said && frame.getFocusOwner() != null);
    }
}
