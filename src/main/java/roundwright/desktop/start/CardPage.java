package roundwright.desktop.start;

import javax.swing.JFrame;
import javax.swing.JPanel;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;

/** Asks by a card in a window that has no page yet. */
final class CardPage extends JPanel implements Asking {
    private static final double EDGE = 24;

    private final transient JFrame frame;
    private transient Question shown;

    /**
     * @param frame the window, of which this becomes the content
     * @param leave is done at Escape
     */
    CardPage(JFrame frame, Runnable leave) {
        super(null);
        this.frame = frame;
        setBackground(Tone.BACKGROUND.color());
        Keys.bindAround(this, "ESCAPE", leave);
    }

    /** Shows a card in place of the one that is shown. */
    @Override
    public void ask(Question question) {
        close();
        shown = question;
        add(question.card());
        frame.setContentPane(this);
        frame.validate();
        repaint();
        question.first().requestFocusInWindow();
    }

    @Override
    public void close() {
        removeAll();
        repaint();
    }

    @Override
    public void doLayout() {
        if (getComponentCount() > 0) {
            int edge = Space.points(EDGE);
            int wide = Math.min(Space.points(shown.width()), getWidth() - 2 * edge);
            int high = Math.min(Flowing.heightOf(shown.card(), wide), getHeight() - 2 * edge);
            shown.card().setBounds((getWidth() - wide) / 2, Math.max(edge, (getHeight() - high) / 3), wide, high);
        }
    }
}
