package roundwright.desktop.look;

import java.awt.Container;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/** Scrolls things into sight, also where what scrolls stands in something else that scrolls. */
public final class Sight {
    private Sight() {}

    /** Scrolls everything around a component until a place in it, in its own pixels, is seen. */
    public static void bring(JComponent component, Rectangle place) {
        JComponent from = component;
        Rectangle wanted = place;
        for (Container around = component.getParent(); around != null; around = around.getParent()) {
            if (around instanceof JViewport view) {
                view.scrollRectToVisible(SwingUtilities.convertRectangle(from, wanted, view));
                from = view;
                wanted = new Rectangle(view.getSize());
            }
        }
    }
}
