package roundwright.desktop.window;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** The switch between the pages: one button each, in one trough; with little width only their icons. */
final class PageSwitch extends JPanel {
    private static final double HEIGHT = 36;

    private final Map<Page, PageButton> buttons = new EnumMap<>(Page.class);
    private final ButtonGroup group = new ButtonGroup();
    private boolean narrow;

    PageSwitch(Deeds deeds) {
        super(null);
        setOpaque(false);
        for (Page page : Page.values()) {
            PageButton button = new PageButton(deedOf(page));
            button.addActionListener(event -> deeds.perform(deedOf(page)));
            buttons.put(page, button);
            group.add(button);
            add(button);
        }
    }

    static Deed deedOf(Page page) {
        return switch (page) {
            case PLAN -> Deed.PLAN;
            case COUNTS -> Deed.COUNTS;
            case STUCK -> Deed.STUCK;
            case NEXT -> Deed.NEXT;
        };
    }

    void show(Page page) {
        buttons.get(page).setSelected(true);
    }

    void setNarrow(boolean narrow) {
        this.narrow = narrow;
    }

    int widthFor(boolean iconsOnly) {
        int width = Space.points(6);
        for (PageButton button : buttons.values()) {
            width += button.widthFor(iconsOnly) + Space.points(2);
        }
        return width;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(widthFor(narrow), Space.points(HEIGHT));
    }

    @Override
    public void doLayout() {
        int in = Space.points(3);
        int x = in + Space.points(1);
        for (PageButton button : buttons.values()) {
            int width = button.widthFor(narrow);
            button.setBounds(x, in, width, getHeight() - 2 * in);
            x += width + Space.points(2);
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setColor(Tone.SWITCH.color());
        int arc = Space.points(22);
        smooth.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        smooth.dispose();
    }

    private final class PageButton extends JToggleButton {
        private final transient Deed deed;

        PageButton(Deed deed) {
            super(deed.words());
            this.deed = deed;
            setToolTipText(
                    deed.keyWords().map(key -> deed.words() + " (" + key + ")").orElse(deed.words()));
            setContentAreaFilled(false);
            setBorderPainted(false);
            addFocusListener(new Keys.RepaintOnFocus(this));
        }

        int widthFor(boolean iconsOnly) {
            return iconsOnly
                    ? Space.points(40)
                    : getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(deed.words()) + Space.points(28);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D smooth = Space.smooth(graphics);
            int arc = Space.points(18);
            if (isSelected()) {
                smooth.setColor(Tone.SURFACE.color());
                smooth.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
            }
            if (isSelected() || hasFocus()) {
                smooth.setColor((hasFocus() ? Tone.PINE : Tone.LINE).color());
                smooth.setStroke(new java.awt.BasicStroke(hasFocus() ? Space.points(2) : 1));
                smooth.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
            }
            Tone tone = isSelected() ? Tone.PINE : getModel().isRollover() ? Tone.INK : Tone.MUTED;
            paintWords(smooth, tone);
            smooth.dispose();
        }

        private void paintWords(Graphics2D graphics, Tone tone) {
            if (narrow) {
                int side = Space.points(18);
                deed.glyph()
                        .icon(18, Optional.of(tone))
                        .paintIcon(this, graphics, (getWidth() - side) / 2, (getHeight() - side) / 2);
                return;
            }
            graphics.setFont(Type.SMALL_STRONG.font());
            graphics.setColor(tone.color());
            int width = graphics.getFontMetrics().stringWidth(deed.words());
            float baseline = getHeight() / 2f + Type.SMALL_STRONG.font().getSize2D() * 0.36f;
            graphics.drawString(deed.words(), (getWidth() - width) / 2f, baseline);
        }
    }
}
