package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;
import roundwright.group.RoundPlace;

/** 500 students and 120 rounds: a key stroke on the counts stays well under what a hand notices. */
@ExtendWith(OnEventThread.class)
class LargeGroupTest {
    /** Milliseconds of the processor for one key stroke with its painting, in the middle of ten. */
    private static final double MOST = 50;

    @Test
    void aCountIsTypedWithoutAPause() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            LargeFile.fill(file);
            file.desk().choosePage(Page.COUNTS);
            file.desk().choosePlace(new RoundPlace("Body", 61));
            MainPanel panel = Pictures.layOut(file.panelWithoutInsight(), 1280, 820);
            Pictures.paint(panel);
            List<Double> typing = new ArrayList<>();
            List<Double> moving = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                JTable table = (JTable) ((FirstFocus) panel.shownPage()).first();
                moving.add(busy(panel, () -> press(table, "DOWN")));
                typing.add(busy(panel, () -> {
                    type(table, '3');
                    type(table, '1');
                    press(table, "ENTER");
                }));
            }
            assertTrue(middle(moving) < MOST, "moving takes " + middle(moving) + " ms");
            assertTrue(middle(typing) < MOST * 4, "typing a count and filing it takes " + middle(typing) + " ms");
        }
    }

    @Test
    void everyPageIsShownWithoutALongPause() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            LargeFile.fill(file);
            MainPanel panel = Pictures.layOut(file.panelWithoutInsight(), 1280, 820);
            List<Deed> pages = List.of(Deed.COUNTS, Deed.NEXT, Deed.PLAN);
            pages.forEach(page -> panel.deeds().perform(page));
            for (Deed page : pages) {
                List<Double> shown = new ArrayList<>();
                for (int i = 0; i < 7; i++) {
                    panel.deeds().perform(page == Deed.PLAN ? Deed.NEXT : Deed.PLAN);
                    shown.add(busy(panel, () -> panel.deeds().perform(page)));
                }
                assertTrue(middle(shown) < MOST * 2, page + " takes " + middle(shown) + " ms");
            }
        }
    }

    private static double middle(List<Double> times) {
        List<Double> last =
                times.subList(times.size() / 3, times.size()).stream().sorted().toList();
        return last.get(last.size() / 2);
    }

    /** Milliseconds of the processor, so that what else the machine does counts for nothing. */
    private static double busy(MainPanel panel, Runnable work) {
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        work.run();
        Pictures.layOut(panel, 1280, 820);
        Pictures.paint(panel);
        return (threads.getCurrentThreadCpuTime() - before) / 1e6;
    }

    private static void press(JTable table, String stroke) {
        table.getActionMap()
                .get(table.getInputMap().get(KeyStroke.getKeyStroke(stroke)))
                .actionPerformed(null);
    }

    private static void type(JTable table, char key) {
        for (var listener : table.getKeyListeners()) {
            listener.keyTyped(new java.awt.event.KeyEvent(
                    table, java.awt.event.KeyEvent.KEY_TYPED, 0, 0, java.awt.event.KeyEvent.VK_UNDEFINED, key));
        }
    }
}
