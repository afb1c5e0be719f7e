package roundwright.desktop.counts;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** The head of the names' column. */
final class NamesHead extends Painted {
    private static final Wording WORDS = Wording.of("desktop");

    NamesHead() {
        getAccessibleContext().setAccessibleName(WORDS.say("student"));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setFont(Type.SMALL_STRONG.font());
        smooth.setColor(Tone.MUTED.color());
        smooth.drawString(WORDS.say("student"), Space.of(1), getHeight() - Space.of(1.5));
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        smooth.dispose();
    }
}
