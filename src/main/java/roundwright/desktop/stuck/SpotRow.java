package roundwright.desktop.stuck;

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
import roundwright.mistakes.help.TroubleSpot;
import roundwright.wording.Wording;

/** A round where many go wrong: which, how its line reads, how many of how many, and their share as a bar. */
final class SpotRow extends Painted {
    private static final Wording WORDS = Wording.of("desktop");

    private final String place;
    private final String line;
    private final String wrong;
    private final double share;

    SpotRow(TroubleSpot spot, String line, String told) {
        this.place =
                WORDS.say("part-and-number", spot.place().part(), spot.place().round());
        this.line = line;
        this.wrong = WORDS.say("wrong-of", spot.wrong(), spot.counted());
        this.share = spot.counted() == 0 ? 0 : spot.wrong() / (double) spot.counted();
        setToolTipText(told);
        getAccessibleContext().setAccessibleName(told);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.of(30), Space.points(38));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Font strong = Type.STRONG.font();
        int baseline = Space.points(17);
        smooth.setFont(strong);
        smooth.setColor(Tone.INK.color());
        smooth.drawString(place, 0, baseline);
        int after = smooth.getFontMetrics().stringWidth(place) + Space.of(1);
        double right = Figures.width(wrong, strong);
        Figures.paintRight(smooth, wrong, strong, getWidth(), baseline);
        smooth.setFont(Type.BODY.font());
        smooth.setColor(Tone.MUTED.color());
        smooth.drawString(
                Cut.to(line, smooth.getFontMetrics(), getWidth() - after - right - Space.of(1.5)), after, baseline);
        Bar.paint(smooth, 0, Space.points(25), getWidth(), share, Tone.MARIGOLD);
        smooth.dispose();
    }
}
