package roundwright.desktop.window;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.LayoutFocusTraversalPolicy;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;

/** Lies over the pages while something is asked: one card in the middle, the rest dimmed. Escape takes it away. */
final class Overlay extends JPanel {
    private static final double EDGE = 24;
    private static final int DIM = 110;

    private Optional<JComponent> shown = Optional.empty();
    private int width;
    private Optional<Component> before = Optional.empty();

    Overlay() {
        super(null);
        setOpaque(false);
        setVisible(false);
        setFocusCycleRoot(true);
        setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
        addMouseListener(new MouseAdapter() {});
        addMouseWheelListener(event -> {});
        Keys.bindAround(this, "ESCAPE", this::close);
    }

    boolean open() {
        return shown.isPresent();
    }

    /** Shows a card of a width in points, and gives the focus to a component in it. */
    void show(JComponent card, double points, JComponent first) {
        before = Optional.ofNullable(
                java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
        removeAll();
        add(card);
        shown = Optional.of(card);
        width = (int) points;
        setVisible(true);
        revalidate();
        repaint();
        if (isShowing()) {
            first.requestFocusInWindow();
        }
    }

    void close() {
        removeAll();
        shown = Optional.empty();
        setVisible(false);
        before.filter(Component::isShowing).ifPresent(Component::requestFocusInWindow);
    }

    @Override
    public void doLayout() {
        shown.ifPresent(card -> {
            int edge = Space.points(EDGE);
            int wide = Math.min(Space.points(width), getWidth() - 2 * edge);
            int high = Math.min(Flowing.heightOf(card, wide), getHeight() - 2 * edge);
            int top = Math.max(edge, (getHeight() - high) / 3);
            card.setBounds((getWidth() - wide) / 2, top, wide, high);
        });
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Color ground = Tone.BACKGROUND.color();
        int dark = roundwright.desktop.look.Theme.dark() ? 0 : 40;
        graphics.setColor(new Color(
                Math.min(dark, ground.getRed()),
                Math.min(dark, ground.getGreen()),
                Math.min(dark, ground.getBlue()),
                DIM));
        Insets insets = getInsets();
        graphics.fillRect(insets.left, insets.top, getWidth(), getHeight());
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.DIALOG;
                }
            };
        }
        return accessibleContext;
    }
}
