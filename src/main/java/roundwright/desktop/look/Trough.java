package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;

/** Pills side by side in a sunken strip, of which one holds. */
public class Trough extends JPanel {
    private static final double IN = 3;
    private static final double ROUND = 0.62;

    private final transient List<Pill> pills = new ArrayList<>();
    private final ButtonGroup group = new ButtonGroup();
    private final double height;
    private final double gap;

    /**
     * @param height in points
     * @param gap between two pills, in points
     */
    public Trough(double height, double gap) {
        super(null);
        this.height = height;
        this.gap = gap;
        setOpaque(false);
    }

    protected void add(Pill pill) {
        pills.add(pill);
        group.add(pill);
        super.add(pill);
    }

    protected List<Pill> pills() {
        return pills;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = 2 * Space.points(IN) + (pills.size() - 1) * Space.points(gap);
        for (Pill pill : pills) {
            width += pill.wide();
        }
        return new Dimension(width, Space.points(height));
    }

    @Override
    public void doLayout() {
        int in = Space.points(IN);
        int x = in;
        for (Pill pill : pills) {
            pill.setBounds(x, in, pill.wide(), getHeight() - 2 * in);
            x += pill.wide() + Space.points(gap);
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.SWITCH.color());
        int arc = (int) Math.round(getHeight() * ROUND);
        smooth.fillRoundRect(0, 0, Math.min(getWidth(), getPreferredSize().width), getHeight(), arc, arc);
        smooth.dispose();
    }
}
