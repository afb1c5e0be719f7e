package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JCheckBox;
import javax.swing.JPanel;

/** A box to tick with words that break their lines; pressing the words ticks the box. */
public final class TickRow extends JPanel implements Flowing {
    private static final double GAP = 6;

    private final JCheckBox box;
    private final Prose words;

    /** A box without words of its own gets these. */
    public TickRow(JCheckBox box, String words) {
        super(null);
        setOpaque(false);
        this.box = box;
        this.words = Prose.body(words).nameOf(box);
        this.words.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                box.requestFocusInWindow();
                box.doClick(0);
            }
        });
        add(box);
        add(this.words);
    }

    private int left() {
        return box.getPreferredSize().width + Space.points(GAP);
    }

    @Override
    public int heightFor(int width) {
        return Math.max(box.getPreferredSize().height, words.heightFor(width - left()));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : left() + words.getPreferredSize().width;
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        Dimension side = box.getPreferredSize();
        int width = getWidth() - left();
        int height = words.heightFor(width);
        box.setBounds(0, 0, side.width, side.height);
        words.setBounds(left(), Math.max(0, (side.height - height) / 2), width, height);
    }
}
