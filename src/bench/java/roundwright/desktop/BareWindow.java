package roundwright.desktop;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Graphics;
import java.lang.management.ManagementFactory;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/** The yardstick of starts: a window in the same look with one table, and nothing else. Says "ready N" as the program does. */
public final class BareWindow {
    private static final int ROWS = 40;
    private static final int COLUMNS = 8;

    private BareWindow() {}

    public static void main(String[] arguments) {
        SwingUtilities.invokeLater(BareWindow::show);
    }

    private static void show() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("Bare");
        frame.add(new JScrollPane(new JTable(ROWS, COLUMNS)) {
            private boolean said;

            @Override
            protected void paintChildren(Graphics graphics) {
                super.paintChildren(graphics);
                if (!said) {
                    said = true;
                    SwingUtilities.invokeLater(BareWindow::ready);
                }
            }
        });
        frame.setSize(1280, 820);
        frame.setVisible(true);
    }

    private static void ready() {
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.err.println("ready " + (System.currentTimeMillis() - began));
    }
}
