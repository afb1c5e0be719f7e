package roundwright.desktop.look;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The head of a card: words at the left, buttons at the right; the buttons go below the words where there is no room beside. */
public final class HeadRow extends JPanel implements Flowing {
    private static final double GAP = 8;
    private static final double BELOW = 12;

    private final JComponent words;
    private final Wrap buttons = new Wrap(1);

    public HeadRow(JComponent words, Component... buttons) {
        super(null);
        this.words = words;
        setOpaque(false);
        add(words);
        for (Component button : buttons) {
            this.buttons.add(button);
        }
        add(this.buttons);
    }

    private int buttonsWidth() {
        int width = -Space.of(1);
        for (Component button : buttons.getComponents()) {
            width += button.getPreferredSize().width + Space.of(1);
        }
        return Math.max(0, width);
    }

    private boolean fits(int width) {
        return words.getPreferredSize().width + Space.points(GAP) + buttonsWidth() <= width;
    }

    @Override
    public int heightFor(int width) {
        int wordsHeight = Flowing.heightOf(words, width);
        int height = fits(width)
                ? Math.max(wordsHeight, buttons.heightFor(buttonsWidth()))
                : wordsHeight + Space.points(GAP) + buttons.heightFor(width);
        return height + Space.points(BELOW);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : words.getPreferredSize().width + buttonsWidth();
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int width = getWidth();
        if (fits(width)) {
            int high = getHeight() - Space.points(BELOW);
            int wordsHeight = words.getPreferredSize().height;
            int buttonsHeight = buttons.heightFor(buttonsWidth());
            words.setBounds(0, (high - wordsHeight) / 2, width - buttonsWidth() - Space.points(GAP), wordsHeight);
            buttons.setBounds(width - buttonsWidth(), (high - buttonsHeight) / 2, buttonsWidth(), buttonsHeight);
        } else {
            int wordsHeight = Flowing.heightOf(words, width);
            words.setBounds(0, 0, width, wordsHeight);
            buttons.setBounds(0, wordsHeight + Space.points(GAP), width, buttons.heightFor(width));
        }
    }
}
