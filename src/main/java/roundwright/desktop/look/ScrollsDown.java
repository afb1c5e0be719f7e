package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.Scrollable;

/** What is as wide as the place in which it scrolls, and scrolls down by lines and by views. */
interface ScrollsDown extends Flowing, Scrollable {
    double LINE = 3;
    double KEPT_IN_VIEW = 4;

    /** As every component has it. */
    Dimension getPreferredSize();

    @Override
    default Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    default int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Space.of(LINE);
    }

    @Override
    default int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Space.of(LINE), visible.height - Space.of(KEPT_IN_VIEW));
    }

    @Override
    default boolean getScrollableTracksViewportWidth() {
        return true;
    }
}
