package roundwright.desktop.window;

import java.awt.Dimension;
import javax.swing.JButton;
import javax.swing.JPanel;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Space;
import roundwright.wording.Wording;

/**
 * The head of the window: what is in hand, the pages, undo and redo, the field that finds. With little width the words about the
 * group go first, then the field becomes a button, then the pages keep only their icons.
 */
final class Header extends JPanel {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double HEIGHT = 52;
    private static final double FIELD = 226;
    private static final double BUTTON = 34;
    private static final double GAP = 10;

    private final CourseButton course;
    private final PageSwitch pages;
    private final JButton undo;
    private final JButton redo;
    private final FindButton find;
    private final JButton more;

    Header(Deeds deeds, Runnable chooseCourse, Runnable openMenu) {
        super(null);
        setOpaque(false);
        course = new CourseButton(chooseCourse);
        pages = new PageSwitch(deeds);
        undo = deeds.iconButton(Deed.UNDO);
        redo = deeds.iconButton(Deed.REDO);
        find = new FindButton(() -> deeds.perform(Deed.FIND), deeds.hint(Deed.FIND));
        more = Buttons.quiet("", openMenu);
        more.setIcon(Glyph.MORE.icon(18, java.util.Optional.empty()));
        more.putClientProperty("JButton.buttonType", "toolBarButton");
        more.getAccessibleContext().setAccessibleName(WORDS.say("menu"));
        more.setToolTipText(WORDS.say("menu"));
        add(course);
        add(pages);
        add(undo);
        add(redo);
        add(find);
        add(more);
    }

    CourseButton course() {
        return course;
    }

    PageSwitch pages() {
        return pages;
    }

    JButton more() {
        return more;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(900), Space.points(HEIGHT));
    }

    @Override
    public void doLayout() {
        int gap = Space.points(GAP);
        int button = Space.points(BUTTON);
        int buttons = 3 * button;
        boolean roomy =
                course.shortWidth() + pages.widthOfWords() + buttons + Space.points(FIELD) + 4 * gap <= getWidth();
        int finder = roomy ? Space.points(FIELD) : button;
        boolean words = course.shortWidth() + pages.widthOfWords() + buttons + finder + 3 * gap <= getWidth();
        pages.setNarrow(!words);
        int right = getWidth();
        right = place(more, right, button, 0);
        right = place(find, right, finder, roomy ? gap / 2 : 0);
        right = place(redo, right, button, roomy ? gap / 2 : 0);
        right = place(undo, right, button, 0);
        right = place(pages, right, pages.getPreferredSize().width, gap);
        int room = right - gap;
        course.setBounds(0, middle(36), Math.max(0, Math.min(course.fullWidth(), room)), Space.points(36));
    }

    private int middle(double height) {
        return (getHeight() - Space.points(height)) / 2;
    }

    private int place(java.awt.Component component, int right, int width, int gap) {
        double height = component == find || component == pages ? 36 : BUTTON;
        component.setBounds(right - gap - width, middle(height), width, Space.points(height));
        return right - gap - width;
    }
}
