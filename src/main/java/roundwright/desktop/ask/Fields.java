package roundwright.desktop.ask;

import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import roundwright.desktop.look.Space;

/** Fields in the dress of the window. */
public final class Fields {
    private Fields() {}

    /** Several lines of text; Tab leaves the field, as it does everywhere. */
    public static JTextArea lines(String text, int rows) {
        JTextArea area = new JTextArea(text, rows, 20);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(
                KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(java.awt.AWTKeyStroke.getAWTKeyStroke("TAB")));
        area.setFocusTraversalKeys(
                KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
                Set.of(java.awt.AWTKeyStroke.getAWTKeyStroke("shift TAB")));
        return area;
    }

    static JComponent scrolled(JTextArea area) {
        JScrollPane scroll = new JScrollPane(area) {
            @Override
            public Dimension getPreferredSize() {
                int line = area.getFontMetrics(area.getFont()).getHeight();
                return new Dimension(super.getPreferredSize().width, area.getRows() * line + Space.of(2));
            }
        };
        scroll.setFocusable(false);
        scroll.setBorder(new com.formdev.flatlaf.ui.FlatScrollPaneBorder());
        return scroll;
    }
}
