package roundwright.desktop.look;

/** A line of the pattern as it is written, on its wash. */
public final class WrittenLine extends Stack {
    private final Prose prose;

    public WrittenLine(String text) {
        this(text, Type.LINE);
    }

    public WrittenLine(String text, Type type) {
        prose = below(0, new Prose(text, type, type, Tone.INK));
        setBorder(Space.pad(1.25, 1.75, 1.25, 1.75));
    }

    public void setText(String text) {
        prose.setText(text);
    }

    public String text() {
        return prose.text();
    }

    @Override
    protected void paintComponent(java.awt.Graphics graphics) {
        java.awt.Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.WASH.color());
        int arc = Space.smallArc() * 2;
        smooth.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        smooth.dispose();
    }
}
