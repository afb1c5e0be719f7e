package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/** A few words in one trough, of which one holds. Left and right go from one to the next. */
public final class Switch extends JPanel {
    private static final double HEIGHT = 32;
    private static final double IN = 3;

    private final transient List<Part> parts = new ArrayList<>();
    private final ButtonGroup group = new ButtonGroup();

    /**
     * @param told what the switch is for, for those who listen to the window
     * @param chosen is told of every place, from 0, that a person chooses
     */
    public Switch(String told, List<String> words, IntConsumer chosen) {
        super(null);
        setOpaque(false);
        getAccessibleContext().setAccessibleName(told);
        for (int place = 0; place < words.size(); place++) {
            int number = place;
            Part part = new Part(words.get(place));
            part.addActionListener(event -> chosen.accept(number));
            Keys.bind(part, "LEFT", () -> step(number - 1));
            Keys.bind(part, "RIGHT", () -> step(number + 1));
            parts.add(part);
            group.add(part);
            add(part);
        }
        show(0);
    }

    /** Shows a place as chosen without telling anyone. */
    public void show(int place) {
        parts.get(place).setSelected(true);
    }

    private void step(int place) {
        if (place >= 0 && place < parts.size()) {
            parts.get(place).requestFocusInWindow();
            parts.get(place).doClick(0);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int width = 2 * Space.points(IN);
        for (Part part : parts) {
            width += part.wide();
        }
        return new Dimension(width, Space.points(HEIGHT));
    }

    @Override
    public void doLayout() {
        int in = Space.points(IN);
        int x = in;
        for (Part part : parts) {
            part.setBounds(x, in, part.wide(), getHeight() - 2 * in);
            x += part.wide();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.SWITCH.color());
        int arc = Space.points(20);
        smooth.fillRoundRect(0, 0, Math.min(getWidth(), getPreferredSize().width), getHeight(), arc, arc);
        smooth.dispose();
    }

    private static final class Part extends JToggleButton {
        Part(String words) {
            super(words);
            setContentAreaFilled(false);
            setBorderPainted(false);
            addFocusListener(new Keys.RepaintOnFocus(this));
        }

        int wide() {
            return getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(getText()) + Space.points(28);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D smooth = Space.smooth(graphics);
            int arc = Space.points(16);
            if (isSelected()) {
                smooth.setColor(Tone.SURFACE.color());
                smooth.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
            }
            if (isSelected() || hasFocus()) {
                smooth.setColor((hasFocus() ? Tone.PINE : Tone.LINE).color());
                smooth.setStroke(new java.awt.BasicStroke(hasFocus() ? Space.points(2) : 1));
                smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
            }
            smooth.setFont(Type.SMALL_STRONG.font());
            smooth.setColor((isSelected() ? Tone.PINE : getModel().isRollover() ? Tone.INK : Tone.MUTED).color());
            int width = smooth.getFontMetrics().stringWidth(getText());
            float baseline = getHeight() / 2f + Type.SMALL_STRONG.font().getSize2D() * 0.36f;
            smooth.drawString(getText(), (getWidth() - width) / 2f, baseline);
            smooth.dispose();
        }
    }
}
