package roundwright.desktop.look;

import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;

/** The page's own scrolling, for windows too small to show it whole. */
public final class PageScroll extends JScrollPane {
    public PageScroll(JComponent page) {
        super(page, VERTICAL_SCROLLBAR_AS_NEEDED, HORIZONTAL_SCROLLBAR_NEVER);
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        getViewport().setOpaque(false);
        setFocusable(false);
        getVerticalScrollBar().setOpaque(false);
    }
}
