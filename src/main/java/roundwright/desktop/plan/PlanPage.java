package roundwright.desktop.plan;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.chart.ChartSaver;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Page;
import roundwright.desktop.editor.EditorCard;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.HeadRow;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.PageScroll;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.TwoCards;
import roundwright.desktop.look.TwoSteps;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.planning.ChosenLesson;
import roundwright.desktop.planning.CourseCard;
import roundwright.desktop.planning.LessonCard;
import roundwright.desktop.planning.LessonsByHand;
import roundwright.desktop.planning.PlanningDeeds;
import roundwright.wording.Wording;

/** The lessons, and beside them the chosen round. */
public final class PlanPage extends JPanel implements FirstFocus, TwoSteps {
    private static final Wording WORDS = Wording.of("desktop");

    /** What the lessons take of the width. */
    private static final double SHARE = 0.63;

    private final transient LessonsPresenter presenter;
    private final LessonsTable table;
    private final transient Desk desk;
    private final transient ChartSaver saver;
    private final TwoCards cards;
    private final JComponent planning;
    private transient Optional<JComponent> unsplit = Optional.empty();
    private transient Optional<EditorCard> editor = Optional.empty();
    private transient Optional<RoundCard> besideText = Optional.empty();
    private final Text heading = Text.heading("");
    private final Prose toMend = Prose.of("", Type.SECOND, Tone.OVER);
    private final transient ChosenLesson chosen;
    private final transient Deeds deeds;
    private final transient PlanningDeeds planningDeeds;
    private transient Optional<SidePanel> side = Optional.empty();
    private boolean byLesson;

    public PlanPage(Desk desk, Deeds deeds, Asking asking, ChartSaver saver) {
        super(new BorderLayout());
        setOpaque(false);
        this.desk = desk;
        this.saver = saver;
        this.deeds = deeds;
        chosen = new ChosenLesson(desk);
        planningDeeds = new PlanningDeeds(desk, deeds, new LessonsByHand(desk, chosen));
        presenter = new LessonsPresenter(desk, chosen);
        table = new LessonsTable(presenter, this::choose);
        deeds.bindOn(table, PlanningDeeds.BY_HAND);
        cards = new TwoCards(new PageCard(table).top(top()), SHARE);
        planning = new PageScroll(cards);
        add(planning);
        planningDeeds.bind(asking);
        deeds.on(Deed.EDIT_PATTERN, this::edit);
        refresh();
        desk.listen(this::changed);
    }

    private Stack top() {
        Stack top = new Stack();
        top.below(
                0,
                new HeadRow(
                        heading, deeds.button(Deed.SPLIT), deeds.button(Deed.EDIT_PATTERN), deeds.button(Deed.SHEETS)));
        top.below(0, toMend);
        return top;
    }

    /** Nothing is worked out for a page that is not looked at; when it is, everything is. */
    private void changed(Set<Matter> matters) {
        if (desk.choice().page() == Page.PLAN && !Matter.ASIDE.containsAll(matters)) {
            refresh();
        }
        if (matters.contains(Matter.PLACE) && !matters.contains(Matter.COURSE) && !byLesson) {
            side.ifPresent(panel -> panel.show(SidePanel.ROUND));
        }
    }

    @Override
    public void beside() {
        side();
    }

    private SidePanel side() {
        if (side.isEmpty()) {
            SidePanel made = new SidePanel(
                    new RoundCard(desk, saver),
                    () -> new LessonCard(desk, chosen, deeds),
                    () -> new CourseCard(desk, deeds));
            side = Optional.of(made);
            cards.with(made);
        }
        return side.get();
    }

    /** A lesson chosen in the table is shown beside it. */
    private void choose(int row) {
        byLesson = true;
        presenter.choose(row);
        byLesson = false;
        side().showLesson();
        planningDeeds.enable();
        table.refresh();
    }

    private void refresh() {
        heading.setText(presenter.heading());
        Optional<String> trouble = presenter.toMend();
        toMend.setText(trouble.orElse(""));
        toMend.setVisible(trouble.isPresent());
        showPlanning();
        table.refresh();
        revalidate();
        repaint();
    }

    /** Where there are no lessons, what to do about that stands in their place. */
    private void showPlanning() {
        JComponent wanted = presenter.rows().isEmpty() ? unsplit() : planning;
        if (editor.isEmpty() && wanted.getParent() != this) {
            removeAll();
            add(wanted);
        }
    }

    private JComponent unsplit() {
        if (unsplit.isEmpty()) {
            unsplit = Optional.of(
                    new PageScroll(new TwoCards(new PageCard(noLessons()), SHARE).with(new RoundCard(desk, saver))));
        }
        return unsplit.get();
    }

    private Stack noLessons() {
        Stack noLessons = new Stack();
        noLessons.below(0, Prose.heading(presenter.heading()));
        noLessons.below(1, Prose.body(WORDS.say("no-lessons")));
        Wrap ways = noLessons.below(2, new Wrap(1));
        ways.add(deeds.mainButton(Deed.SPLIT));
        ways.add(deeds.button(Deed.EDIT_PATTERN));
        return noLessons;
    }

    /** Puts the course's text in the place of the lessons, until it is left. */
    private void edit() {
        desk.choosePage(Page.PLAN);
        if (editor.isEmpty()) {
            EditorCard shown = new EditorCard(desk, this::showLessons);
            editor = Optional.of(shown);
            removeAll();
            add(new PageScroll(new TwoCards(shown, SHARE).with(besideText())));
            revalidate();
            repaint();
        }
        if (isShowing()) {
            first().requestFocusInWindow();
        }
    }

    /** Made once: it listens as long as the page. */
    private RoundCard besideText() {
        if (besideText.isEmpty()) {
            besideText = Optional.of(new RoundCard(desk, saver));
        }
        return besideText.get();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (planning != null) {
            Theme.dressAside(planning, this);
            unsplit.ifPresent(kept -> Theme.dressAside(kept, this));
            besideText.ifPresent(kept -> Theme.dressAside(kept, this));
        }
    }

    private void showLessons() {
        editor = Optional.empty();
        removeAll();
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
