package roundwright.desktop.look;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/**
 * Two cards: side by side, each as high as the page and scrolling inside; in a narrow window, or with large type, one below the
 * other, and the page scrolls.
 */
public final class TwoCards extends JPanel implements Flowing, Scrollable {
    private static final double LEAST_BESIDE = 800;
    private static final double LEAST_HEIGHT = 250;
    private static final double GAP = 16;

    private final JComponent first;
    private final JComponent second;
    private final double share;

    /** The first card takes a share of the width, from 0 to 1. */
    public TwoCards(JComponent first, JComponent second, double share) {
        super(null);
        this.first = first;
        this.second = second;
        this.share = share;
        setOpaque(false);
        add(first);
        add(second);
    }

    private boolean beside(int width) {
        Container parent = getParent();
        int height = parent == null ? getHeight() : parent.getHeight();
        return width >= Space.points(LEAST_BESIDE) && height >= Space.points(LEAST_HEIGHT);
    }

    @Override
    public int heightFor(int width) {
        return beside(width)
                ? Math.max(first.getPreferredSize().height, second.getPreferredSize().height)
                : Flowing.heightOf(first, width) + Space.points(GAP) + Flowing.heightOf(second, width);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = Flowing.widthOf(this, Space.points(LEAST_BESIDE));
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int gap = Space.points(GAP);
        if (beside(getWidth())) {
            int left = (int) ((getWidth() - gap) * share);
            first.setBounds(0, 0, left, getHeight());
            second.setBounds(left + gap, 0, getWidth() - left - gap, getHeight());
        } else {
            int height = Flowing.heightOf(first, getWidth());
            first.setBounds(0, 0, getWidth(), height);
            second.setBounds(0, height + gap, getWidth(), Flowing.heightOf(second, getWidth()));
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Space.of(3);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Space.of(3), visible.height - Space.of(4));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && beside(getParent().getWidth());
    }
}
