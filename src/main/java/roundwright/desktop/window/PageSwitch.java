package roundwright.desktop.window;

import java.awt.Graphics2D;
import java.util.Optional;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Pill;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Trough;

/** The switch between the pages: one button each, in one trough; with little width only their icons. */
final class PageSwitch extends Trough {
    private static final double HEIGHT = 36;
    private static final double GAP = 2;
    private static final double ICON_WIDTH = 40;
    private static final int ICON = 18;

    private boolean narrow;

    PageSwitch(Deeds deeds) {
        super(HEIGHT, GAP);
        for (Page page : Page.values()) {
            PageButton button = new PageButton(deedOf(page));
            button.addActionListener(event -> deeds.perform(deedOf(page)));
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
        pills().get(page.ordinal()).setSelected(true);
    }

    void setNarrow(boolean narrow) {
        this.narrow = narrow;
    }

    /** The width in pixels that it needs with words. */
    int widthOfWords() {
        boolean now = narrow;
        narrow = false;
        int width = getPreferredSize().width;
        narrow = now;
        return width;
    }

    private final class PageButton extends Pill {
        private final transient Deed deed;

        PageButton(Deed deed) {
            super(deed.words());
            this.deed = deed;
            setToolTipText(
                    deed.keyWords().map(key -> deed.words() + " (" + key + ")").orElse(deed.words()));
        }

        @Override
        public int wide() {
            return narrow ? Space.points(ICON_WIDTH) : super.wide();
        }

        @Override
        protected void paintWords(Graphics2D graphics, Tone tone) {
            if (!narrow) {
                super.paintWords(graphics, tone);
                return;
            }
            int side = Space.points(ICON);
            deed.glyph()
                    .icon(ICON, Optional.of(tone))
                    .paintIcon(this, graphics, (getWidth() - side) / 2, (getHeight() - side) / 2);
        }
    }
}
