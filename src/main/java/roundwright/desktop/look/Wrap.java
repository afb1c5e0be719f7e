package roundwright.desktop.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.JPanel;

/** Components side by side, going on below where the width is used up, as words do. */
public class Wrap extends JPanel implements Flowing {
    private final double gap;

    /** Keeps so many steps of the grid between its components. */
    public Wrap(double gap) {
        super(null);
        this.gap = gap;
        setOpaque(false);
    }

    @Override
    public int heightFor(int width) {
        return place(width, false);
    }

    @Override
    public void doLayout() {
        place(getWidth(), true);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = 0;
        for (Component component : getComponents()) {
            width += component.getPreferredSize().width + Space.of(gap);
        }
        int wide = getWidth() > 0 ? getWidth() : width;
        return new Dimension(wide, heightFor(wide));
    }

    private int place(int width, boolean move) {
        Insets insets = getInsets();
        int right = width - insets.right;
        int x = insets.left;
        int y = insets.top;
        int line = 0;
        for (Component component : getComponents()) {
            if (!component.isVisible()) {
                continue;
            }
            Dimension size = component.getPreferredSize();
            int wide = Math.min(size.width, right - insets.left);
            if (x > insets.left && x + wide > right) {
                x = insets.left;
                y += line + Space.of(gap);
                line = 0;
            }
            if (move) {
                component.setBounds(x, y, wide, size.height);
            }
            x += wide + Space.of(gap);
            line = Math.max(line, size.height);
        }
        return y + line + insets.bottom;
    }
}
