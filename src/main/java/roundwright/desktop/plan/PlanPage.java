package roundwright.desktop.plan;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Page;
import roundwright.desktop.editor.EditorCard;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.HeadRow;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.PageScroll;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.TwoCards;

/** The lessons, and beside them the chosen round. */
public final class PlanPage extends JPanel implements FirstFocus {
    private final transient LessonsPresenter presenter;
    private final LessonsTable table;
    private final transient Desk desk;
    private final JComponent planning;
    private transient Optional<EditorCard> editor = Optional.empty();
    private final Text heading = Text.heading("");

    public PlanPage(Desk desk, Deeds deeds) {
        super(new BorderLayout());
        setOpaque(false);
        presenter = new LessonsPresenter(desk);
        table = new LessonsTable(presenter);
        PageCard lessons = new PageCard(table)
                .top(new HeadRow(
                        heading, deeds.button(Deed.SPLIT), deeds.button(Deed.EDIT_PATTERN), deeds.button(Deed.SHEETS)));
        this.desk = desk;
        planning = new PageScroll(new TwoCards(lessons, new RoundCard(desk), 0.63));
        add(planning);
        deeds.on(Deed.EDIT_PATTERN, this::edit);
        refresh();
        desk.listen(this::changed);
    }

    private void changed(Set<Matter> matters) {
        boolean mine = matters.contains(Matter.COURSE)
                || matters.contains(Matter.GROUP)
                || matters.contains(Matter.PLACE)
                || matters.contains(Matter.COUNTS);
        if (mine) {
            refresh();
        }
    }

    private void refresh() {
        heading.setText(presenter.heading());
        table.refresh();
        revalidate();
        repaint();
    }

    /** Puts the course's text in the place of the lessons, until it is left. */
    private void edit() {
        desk.choosePage(Page.PLAN);
        EditorCard shown = new EditorCard(desk, this::showLessons);
        editor = Optional.of(shown);
        removeAll();
        add(new PageScroll(new TwoCards(shown, new RoundCard(desk), 0.63)));
        revalidate();
        repaint();
        if (isShowing()) {
            shown.first().requestFocusInWindow();
        }
    }

    private void showLessons() {
        editor = Optional.empty();
        removeAll();
        add(planning);
        refresh();
        if (isShowing()) {
            table.requestFocusInWindow();
        }
    }

    @Override
    public JComponent first() {
        return editor.map(EditorCard::first).orElse(table);
    }
}
