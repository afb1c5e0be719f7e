package roundwright.desktop.plan;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import javax.swing.JPanel;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Switch;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.planning.CourseCard;
import roundwright.desktop.planning.LessonCard;
import roundwright.wording.Wording;

/** What stands beside the lessons: the chosen round, the chosen lesson, or the whole course. */
final class SidePanel extends JPanel implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");

    /** Places of the cards in the switch. */
    static final int ROUND = 0;

    static final int LESSON = 1;
    static final int COURSE = 2;

    private final transient List<Supplier<? extends PageCard>> makers;
    private final transient Map<Integer, PageCard> cards = new TreeMap<>();
    private final Stack top = new Stack();
    private final Switch choice;
    private int shown;

    /** The cards of the lesson and of the course are made when they are first looked at. */
    SidePanel(RoundCard round, Supplier<LessonCard> lesson, Supplier<CourseCard> course) {
        super(new BorderLayout());
        setOpaque(false);
        makers = List.of(() -> round, lesson, course);
        choice = new Switch(
                WORDS.say("side-told"),
                List.of(WORDS.say("side.round"), WORDS.say("side.lesson"), WORDS.say("side.course")),
                this::show);
        Wrap row = new Wrap(1);
        row.add(choice);
        top.below(0, row);
        top.setBorder(Space.pad(0, 0, 1.5, 0));
        add(card(ROUND).top(top));
    }

    private PageCard card(int place) {
        return cards.computeIfAbsent(place, wanted -> makers.get(wanted).get());
    }

    int shown() {
        return shown;
    }

    /** Shows the card of a place. */
    void show(int place) {
        choice.show(place);
        if (place == shown) {
            return;
        }
        boolean focused = choice.isAncestorOf(
                java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
        card(shown).setVisible(false);
        removeAll();
        shown = place;
        card(place).setVisible(true);
        add(card(place).top(top));
        revalidate();
        repaint();
        if (focused) {
            choice.getComponent(place).requestFocusInWindow();
        }
    }

    /** Shows the lesson in hand, another one perhaps than it showed before. */
    void showLesson() {
        if (shown == LESSON) {
            card(LESSON).setVisible(true);
        } else {
            show(LESSON);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (cards != null) {
            cards.values().forEach(card -> Theme.dressAside(card, this));
        }
    }

    @Override
    public int heightFor(int width) {
        return card(shown).heightFor(width);
    }

    @Override
    public Dimension getPreferredSize() {
        return card(shown).getPreferredSize();
    }
}
