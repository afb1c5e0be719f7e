package roundwright.desktop.look;

import java.awt.Container;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/**
 * Two cards: side by side, each as high as the page and scrolling inside; in a narrow window, or with large type, one below the
 * other, and the page scrolls.
 */
public final class TwoCards extends JPanel implements ScrollsDown {
    private static final double LEAST_BESIDE = 800;
    private static final double LEAST_HEIGHT = 250;
    private static final double GAP = 16;

    private final JComponent first;
    private final double share;
    private Optional<JComponent> second = Optional.empty();

    /** The first card takes a share of the width, from 0 to 1; the second may come later. */
    public TwoCards(JComponent first, double share) {
        super(null);
        this.first = first;
        this.share = share;
        setOpaque(false);
        add(first);
    }

    /** Puts the second card where it belongs. */
    public TwoCards with(JComponent card) {
        second = Optional.of(card);
        add(card);
        revalidate();
        return this;
    }

    private boolean beside(int width) {
        return width >= Space.points(LEAST_BESIDE) && pageHeight() >= Space.points(LEAST_HEIGHT);
    }

    /** While what it scrolls in has no height yet, the page around that has. */
    private int pageHeight() {
        Container around = getParent();
        while (around != null && around.getHeight() == 0) {
            around = around.getParent();
        }
        return around == null ? getHeight() : around.getHeight();
    }

    /** Beside each other they are as high as the page, whatever is in them. */
    @Override
    public int heightFor(int width) {
        return beside(width)
                ? pageHeight()
                : Flowing.heightOf(first, width)
                        + second.map(card -> Space.points(GAP) + Flowing.heightOf(card, width))
                                .orElse(0);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = Flowing.widthOf(this, Space.points(LEAST_BESIDE));
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int width = getWidth();
        int gap = Space.points(GAP);
        if (beside(width)) {
            int left = (int) ((width - gap) * share);
            first.setBounds(0, 0, left, getHeight());
            second.ifPresent(card -> card.setBounds(left + gap, 0, width - left - gap, getHeight()));
        } else {
            int height = Flowing.heightOf(first, width);
            first.setBounds(0, 0, width, height);
            second.ifPresent(card -> card.setBounds(0, height + gap, width, Flowing.heightOf(card, width)));
        }
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && beside(getParent().getWidth());
    }
}
