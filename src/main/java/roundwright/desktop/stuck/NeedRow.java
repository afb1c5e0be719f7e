package roundwright.desktop.stuck;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** A student who needs help: the name, which opens their counts; where they are; why; what to do. */
final class NeedRow extends JPanel implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double NAME = 132;
    private static final double PAD = 14;

    private final JButton name;
    private final Text where;
    private final Stack words = new Stack();

    NeedRow(String who, String where, String why, Optional<String> what, Runnable open) {
        super(null);
        setOpaque(false);
        name = Buttons.quiet(who, open);
        name.putClientProperty("JButton.buttonType", "toolBarButton");
        name.setHorizontalAlignment(JButton.LEFT);
        name.getAccessibleContext().setAccessibleName(WORDS.say("counts-of", who));
        name.setToolTipText(WORDS.say("counts-of", who));
        this.where = new Text(where, Type.SECOND, Tone.MUTED);
        words.below(0, Prose.body(why));
        what.ifPresent(advice -> words.below(0.5, Prose.body("**" + advice + "**")));
        add(name);
        add(this.where);
        add(words);
    }

    /** The name that opens the counts. */
    JComponent button() {
        return name;
    }

    private int left(int width) {
        return Math.min(Space.points(NAME), width / 3);
    }

    @Override
    public int heightFor(int width) {
        int who = Space.points(30) + where.getPreferredSize().height;
        return Math.max(words.heightFor(width - left(width)), who) + 2 * Space.points(PAD);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(500);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int pad = Space.points(PAD);
        int left = left(getWidth());
        name.setBounds(-Space.points(6), pad - Space.points(5), left, Space.points(32));
        int letters = name.getX() + name.getInsets().left;
        where.setBounds(letters, pad + Space.points(26), left - Space.of(1), where.getPreferredSize().height);
        int width = getWidth() - left;
        words.setBounds(left, pad, width, words.heightFor(width));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, 0.5, getWidth(), 0.5));
        smooth.dispose();
    }
}
