package roundwright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JToggleButton;

/** One of the words in a {@link Trough}: the one that holds lies on top, the others in the trough. */
public class Pill extends JToggleButton {
    private static final double PAD = 28;
    private static final double ROUND = 0.6;
    private static final double BASELINE = 0.36;

    public Pill(String words) {
        super(words);
        setContentAreaFilled(false);
        setBorderPainted(false);
        addFocusListener(new Keys.RepaintOnFocus(this));
    }

    /** The width in pixels that it needs. */
    public int wide() {
        return getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(getText()) + Space.points(PAD);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int arc = (int) Math.round(getHeight() * ROUND);
        if (isSelected()) {
            smooth.setColor(Tone.SURFACE.color());
            smooth.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        }
        if (isSelected() || hasFocus()) {
            smooth.setColor((hasFocus() ? Tone.PINE : Tone.LINE).color());
            smooth.setStroke(new BasicStroke(hasFocus() ? Space.points(2) : 1));
            smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        }
        paintWords(smooth, isSelected() ? Tone.PINE : getModel().isRollover() ? Tone.INK : Tone.MUTED);
        smooth.dispose();
    }

    /** Paints what it says in a tone. */
    protected void paintWords(Graphics2D graphics, Tone tone) {
        graphics.setFont(Type.SMALL_STRONG.font());
        graphics.setColor(tone.color());
        int width = graphics.getFontMetrics().stringWidth(getText());
        double baseline = getHeight() / 2.0 + Type.SMALL_STRONG.font().getSize2D() * BASELINE;
        graphics.drawString(getText(), (getWidth() - width) / 2f, (float) baseline);
    }
}
