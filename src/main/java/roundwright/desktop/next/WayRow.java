package roundwright.desktop.next;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** A technique on the way: its mark, its name, how it stands. */
final class WayRow extends Painted {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double HEIGHT = 44;

    private final transient TechniqueStep step;
    private final String name;

    WayRow(TechniqueStep step, Terms terms) {
        this.step = step;
        this.name = step.technique().name(terms);
        getAccessibleContext().setAccessibleName(name + ": " + word());
    }

    private String word() {
        return switch (step.state()) {
            case SURE -> WORDS.say("way-sure");
            case NEARLY -> WORDS.say("way-nearly");
            case NEXT -> WORDS.say("way-next");
            case LATER -> step.lesson() == 0 ? WORDS.say("way-later") : WORDS.say("way-lesson", step.lesson());
        };
    }

    private Mark mark() {
        return switch (step.state()) {
            case SURE -> Mark.RIGHT;
            case NEARLY -> Mark.UNFINISHED;
            case NEXT -> Mark.NEXT;
            case LATER -> Mark.LATER;
        };
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.of(30), Space.points(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        boolean next = step.state() == TechniqueStep.State.NEXT;
        double side = Space.points(13);
        mark().paint(smooth, 0, (getHeight() - side) / 2, side);
        float baseline = getHeight() / 2f + Type.PAGE.font().getSize2D() * 0.36f;
        smooth.setFont(Type.PAGE.font());
        FontMetrics plain = smooth.getFontMetrics();
        int word = plain.stringWidth(word());
        smooth.setColor((next ? Tone.PINE : Tone.MUTED).color());
        smooth.drawString(word(), getWidth() - word, baseline);
        smooth.setFont((next ? Type.PAGE_STRONG : Type.PAGE).font());
        smooth.setColor((next ? Tone.PINE : Tone.INK).color());
        int left = Space.points(30);
        smooth.drawString(
                Cut.to(name, smooth.getFontMetrics(), getWidth() - left - word - Space.of(1)), left, baseline);
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        smooth.dispose();
    }
}
