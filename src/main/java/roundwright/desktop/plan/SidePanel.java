package roundwright.desktop.plan;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JPanel;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Switch;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** What stands beside the lessons: the chosen round, the chosen lesson, or the whole course. */
final class SidePanel extends JPanel implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");

    /** Places of the cards in the switch. */
    static final int ROUND = 0;

    static final int LESSON = 1;
    static final int COURSE = 2;

    private final transient List<PageCard> cards;
    private final Stack top = new Stack();
    private final Switch choice;
    private int shown;

    SidePanel(PageCard round, PageCard lesson, PageCard course) {
        super(new BorderLayout());
        setOpaque(false);
        cards = List.of(round, lesson, course);
        choice = new Switch(
                WORDS.say("side-told"),
                List.of(WORDS.say("side.round"), WORDS.say("side.lesson"), WORDS.say("side.course")),
                this::show);
        Wrap row = new Wrap(1);
        row.add(choice);
        top.below(0, row);
        top.setBorder(Space.pad(0, 0, 1.5, 0));
        lesson.setVisible(false);
        course.setVisible(false);
        cards.get(ROUND).top(top);
        add(cards.get(ROUND));
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
        cards.get(shown).setVisible(false);
        removeAll();
        shown = place;
        cards.get(place).top(top);
        cards.get(place).setVisible(true);
        add(cards.get(place));
        revalidate();
        repaint();
        if (focused) {
            choice.getComponent(place).requestFocusInWindow();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (cards != null) {
            cards.forEach(card -> Theme.dressAside(card, this));
        }
    }

    @Override
    public int heightFor(int width) {
        return cards.get(shown).heightFor(width);
    }

    @Override
    public Dimension getPreferredSize() {
        return cards.get(shown).getPreferredSize();
    }
}
