package roundwright.desktop.counts;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import roundwright.desktop.look.Bar;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Figures;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** What may have happened, with its share in figures and as a bar. */
final class CauseRow extends Painted {
    private final transient InsightWords.Cause cause;

    CauseRow(InsightWords.Cause cause) {
        this.cause = cause;
        getAccessibleContext().setAccessibleName(cause.words() + ": " + cause.percent());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.of(30), Space.points(36));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Font font = Type.BODY.font();
        Font strong = Type.STRONG.font();
        int baseline = Space.points(16);
        double percent = Figures.width(cause.percent(), strong);
        smooth.setFont(font);
        smooth.setColor(Tone.INK.color());
        String words = Cut.to(cause.words(), smooth.getFontMetrics(), getWidth() - percent - Space.of(1));
        smooth.drawString(words, 0, baseline);
        Figures.paintRight(smooth, cause.percent(), strong, getWidth(), baseline);
        Bar.paint(smooth, 0, Space.points(23), getWidth(), cause.share(), Tone.PINE);
        smooth.dispose();
    }
}
