package roundwright.desktop.window;

import java.awt.Dimension;
import java.awt.FontMetrics;
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

/** What is in hand: the course, the group, the lesson, the terms. Pressing it opens the list of courses and groups. */
final class CourseButton extends JButton {
    private static final double PAD = 8;
    private static final double ARROW = 14;

    private String course = "";
    private String rest = "";

    CourseButton(Runnable does) {
        addActionListener(event -> does.run());
        setContentAreaFilled(false);
        setBorderPainted(false);
        addFocusListener(new Keys.RepaintOnFocus(this));
    }

    void show(String newCourse, String newRest) {
        if (newCourse.equals(course) && newRest.equals(rest)) {
            return;
        }
        course = newCourse;
        rest = newRest;
        getAccessibleContext().setAccessibleName(rest.isEmpty() ? course : course + ", " + rest);
        setToolTipText(rest.isEmpty() ? course : course + " · " + rest);
        revalidate();
        repaint();
    }

    int fullWidth() {
        return shortWidth()
                + Space.points(12)
                + getFontMetrics(Type.SECOND.font()).stringWidth(rest);
    }

    int shortWidth() {
        return getFontMetrics(Type.LINE.font()).stringWidth(course) + Space.points(2 * PAD + ARROW + 6);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(fullWidth(), Space.points(36));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int arc = Space.smallArc() * 2;
        if (getModel().isRollover() || hasFocus()) {
            smooth.setColor((hasFocus() ? Tone.PINE : Tone.LINE).color());
            smooth.setStroke(new java.awt.BasicStroke(hasFocus() ? Space.points(2) : 1));
            smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        }
        float baseline = getHeight() / 2f + Type.LINE.font().getSize2D() * 0.36f;
        int x = Space.points(PAD);
        smooth.setFont(Type.LINE.font());
        smooth.setColor(Tone.INK.color());
        FontMetrics metrics = smooth.getFontMetrics();
        String name = Cut.to(course, metrics, getWidth() - x - Space.points(PAD + ARROW + 4));
        smooth.drawString(name, x, baseline);
        x += metrics.stringWidth(name) + Space.points(6);
        Glyph.DOWN
                .icon((int) ARROW, Optional.of(Tone.MUTED))
                .paintIcon(this, smooth, x, (getHeight() - Space.points(ARROW)) / 2);
        x += Space.points(ARROW + 6);
        smooth.setFont(Type.SECOND.font());
        smooth.setColor(Tone.MUTED.color());
        smooth.drawString(Cut.to(rest, smooth.getFontMetrics(), getWidth() - x - Space.points(4)), x, baseline);
        smooth.dispose();
    }
}
