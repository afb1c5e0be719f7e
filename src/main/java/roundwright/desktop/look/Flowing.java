package roundwright.desktop.look;

/** A component whose height follows from the width it is given, as text does. */
public interface Flowing {
    /** The height in pixels that it needs at a width in pixels. */
    int heightFor(int width);

    /**
     * The width that a component has or is about to get: in something that scrolls, that of the scrolling; else its own, or a
     * natural width in pixels while it has none.
     */
    static int widthOf(java.awt.Component component, int natural) {
        if (component.getParent() instanceof javax.swing.JViewport viewport
                && viewport.getParent() instanceof javax.swing.JScrollPane scroll
                && scroll.getWidth() > 0) {
            java.awt.Insets insets = scroll.getInsets();
            int bar = scroll.getVerticalScrollBar().isVisible()
                    ? scroll.getVerticalScrollBar().getWidth()
                    : 0;
            return scroll.getWidth() - insets.left - insets.right - bar;
        }
        return component.getWidth() > 0 ? component.getWidth() : natural;
    }

    /** What a component needs at a width: its own answer where it flows, else what it prefers. */
    static int heightOf(java.awt.Component component, int width) {
        return component instanceof Flowing flowing ? flowing.heightFor(width) : component.getPreferredSize().height;
    }
}
