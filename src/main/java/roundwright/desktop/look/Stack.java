package roundwright.desktop.look;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.util.IdentityHashMap;
import java.util.Map;
import javax.swing.JPanel;

/**
 * Components one below the other, each as wide as the stack and as high as it needs at that width. The distance above each is
 * given when it is added, in steps of the grid.
 */
public class Stack extends JPanel implements ScrollsDown {
    private static final int NATURAL_WIDTH = 46;

    /** Draws nothing of its own: what is behind it shows. */
    public Stack() {
        super(null);
        setLayout(new Below());
        setOpaque(false);
    }

    /** Adds a component so many steps of the grid below the one before. */
    public <C extends Component> C below(double steps, C component) {
        add(component, (Double) steps);
        return component;
    }

    @Override
    public int heightFor(int width) {
        Insets insets = getInsets();
        return ((Below) getLayout()).height(this, width - insets.left - insets.right) + insets.top + insets.bottom;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null
                && getParent().getHeight() > heightFor(getParent().getWidth());
    }

    private static final class Below implements LayoutManager2 {
        private final Map<Component, Double> above = new IdentityHashMap<>();

        @Override
        public void addLayoutComponent(Component component, Object steps) {
            above.put(component, steps instanceof Double distance ? distance : Double.valueOf(0));
        }

        @Override
        public void addLayoutComponent(String name, Component component) {
            above.put(component, 0.0);
        }

        @Override
        public void removeLayoutComponent(Component component) {
            above.remove(component);
        }

        int height(Container parent, int width) {
            int height = 0;
            for (Component component : parent.getComponents()) {
                if (component.isVisible()) {
                    height += gap(component, height) + Flowing.heightOf(component, width);
                }
            }
            return height;
        }

        private int gap(Component component, int heightSoFar) {
            return heightSoFar == 0 ? 0 : Space.of(above.getOrDefault(component, 0.0));
        }

        @Override
        public void layoutContainer(Container parent) {
            Insets insets = parent.getInsets();
            int width = parent.getWidth() - insets.left - insets.right;
            int done = 0;
            for (Component component : parent.getComponents()) {
                if (component.isVisible()) {
                    done += gap(component, done);
                    int height = Flowing.heightOf(component, width);
                    component.setBounds(insets.left, insets.top + done, width, height);
                    done += height;
                }
            }
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Insets insets = parent.getInsets();
            int width = Flowing.widthOf(parent, Space.of(NATURAL_WIDTH));
            int inner = width - insets.left - insets.right;
            return new Dimension(width, height(parent, inner) + insets.top + insets.bottom);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(Space.of(8), Space.of(4));
        }

        @Override
        public Dimension maximumLayoutSize(Container parent) {
            return new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
        }

        @Override
        public float getLayoutAlignmentX(Container parent) {
            return 0;
        }

        @Override
        public float getLayoutAlignmentY(Container parent) {
            return 0;
        }

        @Override
        public void invalidateLayout(Container parent) {
            // nothing is kept between layouts
        }
    }
}
