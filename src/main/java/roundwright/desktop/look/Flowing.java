package roundwright.desktop.look;

/** A component whose height follows from the width it is given, as text does. */
public interface Flowing {
    /** The height in pixels that it needs at a width in pixels. */
    int heightFor(int width);

    /** What a component needs at a width: its own answer where it flows, else what it prefers. */
    static int heightOf(java.awt.Component component, int width) {
        return component instanceof Flowing flowing ? flowing.heightFor(width) : component.getPreferredSize().height;
    }
}
