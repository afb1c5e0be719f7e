package roundwright.desktop.counts;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import roundwright.desktop.action.Deed;
import roundwright.desktop.start.Folders;
import roundwright.desktop.start.Start;
import roundwright.desktop.window.MainPanel;
import roundwright.workbook.LargeGroup;
import roundwright.workbook.Workbook;

/**
 * Frames of the counts grid in the real window, with 500 students and 120 rounds: scrolling, moving the choice, typing counts; and
 * the time from a typed count to its explanation on the screen. A frame is all that the event thread does for one input until what
 * became dirty is painted and handed to the screen.
 *
 * <p>The yardstick is a bare table of the same rows, columns and size in a bare window of the same look, given the same inputs in turn:
 * what Swing itself needs on this machine. The aims are 16 ms for 99 frames in 100 and 50 ms for an explanation, by the clock; a machine
 * that others use shows itself in the processor's time, which is told beside. Needs a display.
 *
 * <p>{@code java -cp target/roundwright.jar roundwright.desktop.counts.GridFrames}
 */
public final class GridFrames {
    private static final int REPORTED = 60;
    private static final int TURNS = 4;
    private static final int FRAMES_A_TURN = 120;
    private static final int EXPLAINED = 40;
    private static final long PATIENCE = 60_000;

    private final Frames scrolled = new Frames("scrolling");
    private final Frames moved = new Frames("moving the choice");
    private final Frames typed = new Frames("typing counts");
    private final Frames bareScrolled = new Frames("bare table, scrolling");
    private final Frames bareMoved = new Frames("bare table, moving");
    private final Frames bareTyped = new Frames("bare table, values");
    private final JTable grid;
    private final JTable bare;

    private GridFrames(JTable grid, JTable bare) {
        this.grid = grid;
        this.bare = bare;
    }

    public static void main(String[] arguments) throws Exception {
        if (GraphicsEnvironment.isHeadless()) {
            System.out.println("There is no display to open a window on; nothing was measured.");
            return;
        }
        JFrame window = open();
        JTable grid = await(() -> find(window.getContentPane(), CountsTable.class)
                .filter(table -> table.isShowing() && table.getRowCount() == LargeGroup.STUDENTS));
        JTable bare = onEventThread(() -> bare(window, grid));
        GridFrames frames = new GridFrames(grid, bare);
        for (int turn = 0; turn <= TURNS; turn++) {
            frames.turn(turn > 0);
        }
        frames.report();
        explain(window, grid);
        System.exit(0);
    }

    /** The program over a large file of its own, on the page of counts. */
    private static JFrame open() throws Exception {
        Path home = Files.createTempDirectory("roundwright-frames");
        Folders folders = Folders.under(home);
        Files.createDirectories(folders.data());
        try (Workbook workbook = Workbook.create(folders.file(), folders.backups(), Clock.systemDefaultZone())) {
            LargeGroup.fill(workbook, REPORTED);
        }
        Start.open(Optional.empty(), folders, false);
        JFrame window = await(() -> Stream.of(Window.getWindows())
                .filter(shown -> shown instanceof JFrame && shown.isShowing())
                .map(JFrame.class::cast)
                .filter(shown -> shown.getContentPane() instanceof MainPanel)
                .findFirst());
        EventQueue.invokeAndWait(() -> ((MainPanel) window.getContentPane()).deeds().perform(Deed.COUNTS));
        return window;
    }

    private static JTable bare(JFrame window, JTable grid) {
        JTable bare = new JTable(grid.getRowCount(), grid.getColumnCount());
        for (int row = 0; row < bare.getRowCount(); row++) {
            for (int column = 0; column < bare.getColumnCount(); column++) {
                bare.setValueAt(30 + (row + column) % 3, row, column);
            }
        }
        bare.setRowHeight(grid.getRowHeight());
        bare.setCellSelectionEnabled(true);
        bare.changeSelection(0, 0, false, false);
        JFrame frame = new JFrame("Bare");
        frame.add(new JScrollPane(bare));
        frame.setBounds(window.getBounds());
        frame.setVisible(true);
        return bare;
    }

    private void turn(boolean counts) throws Exception {
        for (int frame = 0; frame < FRAMES_A_TURN; frame++) {
            scrolled.take(counts, () -> scroll(grid));
            bareScrolled.take(counts, () -> scroll(bare));
        }
        for (int frame = 0; frame < FRAMES_A_TURN; frame++) {
            moved.take(counts, () -> press(grid, "DOWN"));
            bareMoved.take(counts, () -> press(bare, "DOWN"));
        }
        for (int frame = 0; frame < FRAMES_A_TURN / 3; frame++) {
            typed.take(counts, () -> type(grid, '3'));
            typed.take(counts, () -> type(grid, '0'));
            typed.take(counts, () -> press(grid, "ENTER"));
            bareTyped.take(counts, () -> {
                bare.setValueAt(30, bare.getSelectedRow(), bare.getSelectedColumn());
                press(bare, "DOWN");
            });
        }
    }

    /** One notch of the wheel; from the end on at the beginning again. */
    private static void scroll(JTable table) {
        JScrollPane pane = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, table);
        JScrollBar bar = pane.getVerticalScrollBar();
        int next = bar.getValue() + 3 * table.getRowHeight();
        bar.setValue(next > bar.getMaximum() - bar.getVisibleAmount() ? 0 : next);
    }

    private static void press(JTable table, String stroke) {
        Object action = table.getInputMap(JTable.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .get(KeyStroke.getKeyStroke(stroke));
        Object own = table.getInputMap().get(KeyStroke.getKeyStroke(stroke));
        table.getActionMap()
                .get(own == null ? action : own)
                .actionPerformed(new java.awt.event.ActionEvent(table, 0, stroke));
    }

    private static void type(JTable table, char key) {
        for (var listener : table.getKeyListeners()) {
            listener.keyTyped(new KeyEvent(table, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, key));
        }
    }

    private void report() {
        System.out.printf(
                "%-24s %7s %7s %7s %7s   %9s  %s%n", "frames", "50 %", "95 %", "99 %", "most", "cpu 99 %", "of the bare table's");
        for (Frames[] pair : new Frames[][] {{scrolled, bareScrolled}, {moved, bareMoved}, {typed, bareTyped}}) {
            pair[1].report("");
            pair[0].report("%.1f times (99 %%), %.1f times (middle)"
                    .formatted(
                            pair[0].part(99, pair[0].clock) / pair[1].part(99, pair[1].clock),
                            pair[0].part(50, pair[0].processor) / pair[1].part(50, pair[1].processor)));
        }
    }

    /** Types counts that are off and goes back to each, until what probably happened stands beside it. */
    private static void explain(JFrame window, JTable grid) throws Exception {
        Frames shown = new Frames("count to explanation");
        for (int count = -EXPLAINED / 4; count < EXPLAINED; count++) {
            long began = System.nanoTime();
            EventQueue.invokeAndWait(() -> {
                type(grid, '3');
                type(grid, '2');
                press(grid, "ENTER");
                press(grid, "UP");
                paint();
            });
            await(() -> find(window.getContentPane(), InsightSection.class).filter(GridFrames::painted));
            if (count >= 0) {
                shown.clock.add((System.nanoTime() - began) / 1e6);
                shown.processor.add(Double.NaN);
            }
            EventQueue.invokeAndWait(() -> press(grid, "DOWN"));
        }
        shown.report("");
    }

    private static boolean painted(Component shown) {
        paint();
        return shown.isShowing();
    }

    private static void paint() {
        RepaintManager manager = RepaintManager.currentManager(null);
        manager.validateInvalidComponents();
        manager.paintDirtyRegions();
        Toolkit.getDefaultToolkit().sync();
    }

    private static <T extends Component> Optional<T> find(Component from, Class<T> kind) {
        if (kind.isInstance(from)) {
            return Optional.of(kind.cast(from));
        }
        return from instanceof Container container
                ? Stream.of(container.getComponents())
                        .flatMap(inside -> find(inside, kind).stream())
                        .findFirst()
                : Optional.empty();
    }

    private static <T> T onEventThread(Callable<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    private static <T> T await(Callable<Optional<T>> asked) throws Exception {
        long until = System.currentTimeMillis() + PATIENCE;
        while (System.currentTimeMillis() < until) {
            Optional<T> found = onEventThread(asked);
            if (found.isPresent()) {
                return found.get();
            }
            Thread.sleep(1);
        }
        throw new IOException("what was waited for did not come");
    }

    /** How long frames of one kind took, in milliseconds. */
    private static final class Frames {
        private final String name;
        private final List<Double> clock = new ArrayList<>();
        private final List<Double> processor = new ArrayList<>();

        Frames(String name) {
            this.name = name;
        }

        void take(boolean counts, Runnable input) throws Exception {
            EventQueue.invokeAndWait(() -> {
                long began = System.nanoTime();
                long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                input.run();
                paint();
                if (counts) {
                    clock.add((System.nanoTime() - began) / 1e6);
                    processor.add((ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - busy) / 1e6);
                }
            });
        }

        double part(double percent, List<Double> times) {
            double[] sorted = times.stream().mapToDouble(Double::doubleValue).toArray();
            Arrays.sort(sorted);
            return sorted[(int) Math.min(sorted.length - 1, Math.round(sorted.length * percent / 100))];
        }

        void report(String ratio) {
            System.out.printf(
                    "%-24s %7.1f %7.1f %7.1f %7.1f   %9.1f  %s%n",
                    name, part(50, clock), part(95, clock), part(99, clock), part(100, clock), part(99, processor), ratio);
        }
    }
}
