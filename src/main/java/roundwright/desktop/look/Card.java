package roundwright.desktop.look;

import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import javax.swing.JPanel;

/** A sheet of paper on the table: surface, rounded corners, one hairline. */
public class Card extends JPanel {
    private final Tone fill;
    private final boolean hairline;

    public Card(LayoutManager layout) {
        this(layout, Tone.SURFACE, true);
    }

    public Card() {
        this(new BorderLayout());
    }

    private Card(LayoutManager layout, Tone fill, boolean hairline) {
        super(layout);
        this.fill = fill;
        this.hairline = hairline;
        setOpaque(false);
        setBorder(Space.pad(2, 2.5, 2, 2.5));
    }

    /** The washed ground behind a line of the pattern. */
    public static Card wash() {
        Card card = new Card(new BorderLayout(), Tone.WASH, false);
        card.setBorder(Space.pad(1.5, 1.75, 1.5, 1.75));
        return card;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Rounded sheet = new Rounded(getWidth(), getHeight(), hairline ? Space.arc() : Space.smallArc());
        smooth.setColor(fill.color());
        sheet.fill(smooth);
        if (hairline) {
            smooth.setColor(Tone.LINE.color());
            sheet.draw(smooth, 1);
        }
        smooth.dispose();
    }
}
