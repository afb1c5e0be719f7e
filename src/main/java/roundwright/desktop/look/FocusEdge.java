package roundwright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import javax.swing.JComponent;
import javax.swing.border.AbstractBorder;

/** The edge round something that is typed into: thin, and strong in the accent while what lies in it has the focus. */
public final class FocusEdge extends AbstractBorder {
    private static final double WIDE = 2;

    private final JComponent inside;

    /** The edge follows the focus of a component, which may lie deeper inside. */
    public FocusEdge(JComponent inside) {
        this.inside = inside;
    }

    @Override
    public Insets getBorderInsets(Component component, Insets insets) {
        int wide = Space.points(WIDE);
        insets.set(wide, wide, wide, wide);
        return insets;
    }

    @Override
    public void paintBorder(Component component, Graphics graphics, int x, int y, int width, int height) {
        Graphics2D smooth = Space.smooth(graphics);
        int wide = inside.hasFocus() ? Space.points(WIDE) : 1;
        smooth.setColor((inside.hasFocus() ? Tone.PINE : Tone.EDGE).color());
        smooth.setStroke(new BasicStroke(wide));
        int in = wide / 2;
        smooth.drawRect(x + in, y + in, width - wide, height - wide);
        smooth.dispose();
    }
}
