package roundwright.desktop.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;

/** Components side by side, going on below where the width is used up, as words do. */
public class Wrap extends JPanel implements Flowing {
    private final double gap;
    private boolean onOneFoot;

    /** Keeps so many steps of the grid between its components. */
    public Wrap(double gap) {
        super(null);
        this.gap = gap;
        setOpaque(false);
    }

    /** Lets what stands in a line end at the same height instead of having its middle there: fields under labels of several lines. */
    public Wrap onOneFoot() {
        onOneFoot = true;
        return this;
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
            width += component.isVisible() ? component.getPreferredSize().width + Space.of(gap) : 0;
        }
        int wide = getWidth() > 0 ? getWidth() : width;
        return new Dimension(wide, heightFor(wide));
    }

    private int place(int width, boolean move) {
        Insets insets = getInsets();
        int right = width - insets.right;
        int x = insets.left;
        int y = insets.top;
        int high = 0;
        List<Component> line = new ArrayList<>();
        for (Component component : getComponents()) {
            if (!component.isVisible()) {
                continue;
            }
            Dimension size = component.getPreferredSize();
            int wide = Math.min(size.width, right - insets.left);
            if (x > insets.left && x + wide > right) {
                end(line, y, high, move);
                x = insets.left;
                y += high + Space.of(gap);
                high = 0;
            }
            if (move) {
                component.setBounds(x, y, wide, size.height);
            }
            line.add(component);
            x += wide + Space.of(gap);
            high = Math.max(high, size.height);
        }
        end(line, y, high, move);
        return y + high + insets.bottom;
    }

    private void end(List<Component> line, int y, int high, boolean move) {
        if (move) {
            line.forEach(component -> {
                int free = high - component.getHeight();
                component.setLocation(component.getX(), y + (onOneFoot ? free : free / 2));
            });
        }
        line.clear();
    }
}
