package roundwright.desktop.look;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;

/** A mark beside a word, of a side in points. */
public record MarkIcon(Mark mark, double points) implements Icon {
    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        mark.paint((Graphics2D) graphics, x, y, getIconWidth());
    }

    @Override
    public int getIconWidth() {
        return Space.points(points);
    }

    @Override
    public int getIconHeight() {
        return getIconWidth();
    }
}
