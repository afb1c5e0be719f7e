package roundwright.desktop.window;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JButton;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** Looks like the field that it opens; with little width it keeps only its icon. */
final class FindButton extends JButton {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double ICON = 16;

    FindButton(Runnable find, String hint) {
        addActionListener(event -> find.run());
        addFocusListener(new Keys.RepaintOnFocus(this));
        setContentAreaFilled(false);
        setBorderPainted(false);
        setToolTipText(hint);
        getAccessibleContext().setAccessibleName(WORDS.say("find-told"));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        boolean roomy = getWidth() > Space.points(60);
        int arc = Space.points(18);
        if (roomy) {
            smooth.setColor(Tone.SURFACE.color());
            smooth.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        }
        if (roomy || hasFocus()) {
            smooth.setColor((hasFocus() || getModel().isRollover() ? Tone.PINE : Tone.EDGE).color());
            smooth.setStroke(new java.awt.BasicStroke(hasFocus() ? Space.points(2) : 1));
            smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        }
        int side = Space.points(ICON);
        int left = roomy ? Space.points(10) : (getWidth() - side) / 2;
        Glyph.FIND
                .icon((int) ICON, Optional.of(roomy ? Tone.MUTED : Tone.INK))
                .paintIcon(this, smooth, left, (getHeight() - side) / 2);
        if (roomy) {
            smooth.setFont(Type.SECOND.font());
            smooth.setColor(Tone.MUTED.color());
            int x = left + side + Space.points(8);
            String words = Cut.to(WORDS.say("find-hint"), smooth.getFontMetrics(), getWidth() - x - Space.points(8));
            smooth.drawString(words, x, getHeight() / 2f + Type.SECOND.font().getSize2D() * 0.36f);
        }
        smooth.dispose();
    }
}
