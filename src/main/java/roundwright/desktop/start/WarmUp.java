package roundwright.desktop.start;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Fetches what the first window would wait for, before there is one: typefaces, icons, the look of controls, and what draws them. */
final class WarmUp {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final String LETTERS = "Round 1 of 24: −+×▲▼ abcdefghijklmnopqrstuvwxyz ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int WIDTH = 600;
    private static final int HEIGHT = 60;

    /** In milliseconds: keys and clicks come between one piece of what is fetched later and the next. */
    private static final int BETWEEN = 150;

    /** What every window shows at once. */
    private static final Set<Glyph> OF_THE_HEAD = EnumSet.of(
            Glyph.PLAN,
            Glyph.COUNTS,
            Glyph.STUCK,
            Glyph.NEXT,
            Glyph.FIND,
            Glyph.UNDO,
            Glyph.REDO,
            Glyph.DOWN,
            Glyph.MORE);

    /** What cards are made of and the first pages are not. */
    private static final List<Supplier<JComponent>> OF_CARDS = List.of(
            JComboBox::new, JTextField::new, JTextArea::new, JCheckBox::new, () -> Buttons.main(LETTERS, () -> {}));

    private WarmUp() {}

    /** Draws everything once where nobody sees it. */
    static void run() {
        Graphics2D graphics = unseen();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        for (Type type : Type.values()) {
            graphics.setFont(type.font());
            graphics.drawString(LETTERS, 0, HEIGHT / 2);
            new TextLayout(LETTERS, type.font(), CONTEXT).draw(graphics, 0, HEIGHT / 2f);
        }
        OF_THE_HEAD.forEach(glyph -> draw(glyph, graphics));
        graphics.fill(new RoundRectangle2D.Double(0.5, 0.5, WIDTH, HEIGHT, 9, 9));
        graphics.draw(new Ellipse2D.Double(0.5, 0.5, WIDTH, HEIGHT));
        controls(graphics);
        graphics.dispose();
    }

    private static Graphics2D unseen() {
        return new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB).createGraphics();
    }

    private static void draw(Glyph glyph, Graphics2D graphics) {
        glyph.icon(18, Optional.of(Tone.INK)).paintIcon(null, graphics, 0, 0);
    }

    /** Fetches what the first card would wait for, a piece an event, while nobody has asked for one yet. */
    static void later() {
        Graphics2D graphics = unseen();
        Iterator<Runnable> pieces = Stream.concat(
                        OF_CARDS.stream().<Runnable>map(part -> part::get),
                        EnumSet.complementOf(EnumSet.copyOf(OF_THE_HEAD)).stream()
                                .map(glyph -> () -> draw(glyph, graphics)))
                .iterator();
        Timer timer = new Timer(BETWEEN, null);
        timer.addActionListener(event -> {
            pieces.next().run();
            if (!pieces.hasNext()) {
                timer.stop();
                graphics.dispose();
            }
        });
        timer.start();
    }

    /** Never shown, and let go at once: only the classes and values of their look stay. */
    private static void controls(Graphics2D graphics) {
        JPanel panel = new JPanel(null);
        panel.add(new JButton(LETTERS));
        panel.add(new JToggleButton(LETTERS));
        panel.add(new JLabel(LETTERS));
        panel.add(new JScrollPane(new JTable(2, 2)));
        panel.setSize(WIDTH, HEIGHT);
        for (var control : panel.getComponents()) {
            control.setBounds(0, 0, WIDTH, HEIGHT);
            control.doLayout();
        }
        panel.paint(graphics);
    }
}
