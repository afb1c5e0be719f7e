package roundwright.desktop.window;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;
import javax.swing.JPanel;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Beginning;
import roundwright.wording.Wording;

/** A sentence that the person has to be told, until they have read it. */
final class NoticeBar extends JPanel implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double PAD = 12;
    /** A sentence is short; a failure's own words may go on for pages, and laying those out would hold up the window. */
    private static final int LONGEST = 600;

    private final Prose prose = new Prose("", Type.BODY, Type.STRONG, Tone.INK);
    private final JButton read;

    NoticeBar(Runnable hasRead) {
        super(null);
        setOpaque(false);
        setVisible(false);
        read = Buttons.quiet(WORDS.say("notice-read"), hasRead);
        add(prose);
        add(read);
    }

    /** What it says now; empty for nothing. */
    String sentence() {
        return prose.text();
    }

    void show(String whole) {
        String sentence = Beginning.shown(whole, LONGEST);
        prose.setText(sentence);
        getAccessibleContext().setAccessibleName(sentence);
        setVisible(!sentence.isEmpty());
        revalidate();
    }

    private int proseWidth(int width) {
        return width - 3 * Space.points(PAD) - read.getPreferredSize().width;
    }

    @Override
    public int heightFor(int width) {
        int height = Math.max(prose.heightFor(proseWidth(width)), read.getPreferredSize().height);
        return height + 2 * Space.points(PAD / 1.5);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(800);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int pad = Space.points(PAD);
        int text = prose.heightFor(proseWidth(getWidth()));
        prose.setBounds(pad, (getHeight() - text) / 2, proseWidth(getWidth()), text);
        Dimension button = read.getPreferredSize();
        read.setBounds(getWidth() - pad - button.width, (getHeight() - button.height) / 2, button.width, button.height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int arc = Space.smallArc() * 2;
        smooth.setColor(Tone.MARIGOLD_WASH.color());
        smooth.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        smooth.setColor(Tone.MARIGOLD.color());
        smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
        smooth.dispose();
    }
}
