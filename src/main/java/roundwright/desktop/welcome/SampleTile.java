package roundwright.desktop.welcome;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionListener;
import javax.swing.JButton;
import roundwright.course.Course;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.strip.StripPiece;
import roundwright.desktop.strip.StripSketch;
import roundwright.wording.Wording;

/** A sample course to be opened: its piece, its name, how long it is. */
final class SampleTile extends JButton {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double WIDTH = 250;
    private static final double HEIGHT = 172;

    private final String course;
    private final String about;
    private final transient StripPiece piece;

    SampleTile(Course course, ActionListener open) {
        this.course = course.name();
        this.about = WORDS.say(
                "sample-about",
                course.lessons().size(),
                StripPiece.of(course).columns().size(),
                course.pattern().terms());
        this.piece = StripPiece.of(course);
        addActionListener(open);
        addFocusListener(new Keys.RepaintOnFocus(this));
        setContentAreaFilled(false);
        setBorderPainted(false);
        getAccessibleContext().setAccessibleName(WORDS.say("sample-told", this.course, about));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(WIDTH), Space.points(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int arc = Space.arc() * 2;
        boolean lit = hasFocus() || getModel().isRollover();
        smooth.setColor((getModel().isRollover() ? Tone.WASH : Tone.SURFACE).color());
        smooth.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        smooth.setColor((lit ? Tone.PINE : Tone.EDGE).color());
        smooth.setStroke(new java.awt.BasicStroke(hasFocus() ? Space.points(2) : 1));
        smooth.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
        int pad = Space.of(2);
        int words = Space.points(58);
        StripSketch.paint(smooth, piece, pad, pad, getWidth() - 2.0 * pad, getHeight() - pad - words - Space.of(1.0));
        smooth.setColor(Tone.INK.color());
        smooth.setFont(Type.HEADING.font());
        int room = getWidth() - 2 * pad;
        smooth.drawString(Cut.to(course, smooth.getFontMetrics(), room), pad, getHeight() - words + Space.points(18));
        smooth.setFont(Type.SECOND.font());
        smooth.setColor(Tone.MUTED.color());
        smooth.drawString(Cut.to(about, smooth.getFontMetrics(), room), pad, getHeight() - words + Space.points(38));
        smooth.dispose();
    }
}
