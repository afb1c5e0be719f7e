package roundwright.desktop.counts;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Page;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.HeadRow;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.PageScroll;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Switch;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.TwoCards;
import roundwright.desktop.look.TwoSteps;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** Students by rounds, and beside them what the chosen count says. */
public final class CountsPage extends JPanel implements FirstFocus, TwoSteps {
    private static final double NARROW = 1100;
    private static final double LOW = 560;
    private static final Wording WORDS = Wording.of("desktop");

    private final transient CountsPresenter presenter;
    private final transient Desk desk;
    private final CountsTable table;
    private final NamesTable names;
    private final transient Insights insights;
    private final transient Deeds deeds;
    private transient Optional<DetailCard> detail = Optional.empty();
    private final Text heading = new Text("", Type.HEADING, Tone.INK);
    private final Text subheading = new Text("", Type.BODY, Tone.MUTED);
    private final Prose before = Prose.muted("");
    private final Prose keys = Prose.muted(WORDS.say("counts-keys"));
    private final Text keysInShort = new Text(WORDS.say("counts-keys-in-short"), Type.SECOND, Tone.MUTED);
    private final Switch onward;
    private final TwoCards cards;
    private final JComponent both;
    private transient Optional<JComponent> empty = Optional.empty();

    public CountsPage(Desk desk, Insights insights, Deeds deeds) {
        super(new BorderLayout());
        this.desk = desk;
        this.insights = insights;
        this.deeds = deeds;
        setOpaque(false);
        presenter = new CountsPresenter(desk);
        table = new CountsTable(presenter);
        table.pasteBy(() -> deeds.perform(Deed.PASTE_COUNTS));
        names = new NamesTable(presenter);
        onward = new Switch(
                WORDS.say("enter-goes"),
                List.of(WORDS.say("enter-goes-down"), WORDS.say("enter-goes-right")),
                place -> presenter.onward(Onward.values()[place]));
        Wrap words = new Wrap(1);
        words.add(heading);
        words.add(subheading);
        PageCard grid = new PageCard(table)
                .top(top(new HeadRow(words, deeds.button(Deed.REGISTER), deeds.button(Deed.PASTE_MESSAGES))))
                .foot(foot());
        grid.scroll().setRowHeaderView(names);
        grid.scroll().getRowHeader().setOpaque(false);
        grid.scroll().getRowHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        grid.scroll().setCorner(ScrollPaneConstants.UPPER_LEFT_CORNER, new NamesHead());
        cards = new TwoCards(grid, 0.57);
        both = new PageScroll(cards);
        refresh();
        desk.listen(this::changed);
        insights.listen(() -> detail.ifPresent(DetailCard::refresh));
    }

    @Override
    public void beside() {
        if (detail.isEmpty()) {
            DetailCard made = new DetailCard(desk, insights, deeds);
            detail = Optional.of(made);
            cards.with(made);
        }
    }

    private JComponent top(HeadRow head) {
        Stack top = new Stack();
        top.below(0, head);
        top.below(0, before);
        top.setBorder(Space.pad(0, 0, 1, 0));
        return top;
    }

    private JComponent foot() {
        Wrap enter = new Wrap(1.5);
        enter.add(onward);
        enter.add(keysInShort);
        Stack foot = new Stack();
        foot.below(0, keys);
        foot.below(1, enter);
        foot.setBorder(Space.pad(1.5, 0, 0, 0));
        return foot;
    }

    private JComponent empty() {
        if (empty.isEmpty()) {
            empty = Optional.of(new PageCard(noStudents()));
        }
        return empty.get();
    }

    private Stack noStudents() {
        Stack stack = new Stack();
        stack.below(0, Prose.heading(WORDS.say("no-students-head")));
        stack.below(1, Prose.body(WORDS.say("no-students")));
        Wrap buttons = stack.below(2, new Wrap(1));
        buttons.add(deeds.mainButton(Deed.ADD_STUDENTS));
        return stack;
    }

    /** Nothing is worked out for a page that is not looked at; when it is, everything is. */
    private void changed(Set<Matter> matters) {
        if (desk.choice().page() == Page.COUNTS && !Matter.ASIDE.containsAll(matters)) {
            if (Matter.CHOICE.containsAll(matters)) {
                follow();
            } else {
                refresh();
            }
        }
    }

    /** Another count is chosen: other rounds may be shown, and nothing else changes but what was chosen and what is. */
    private void follow() {
        heading.setText(presenter.heading());
        subheading.setText(presenter.subheading());
        table.follow();
        names.follow();
        detail.ifPresent(DetailCard::refresh);
    }

    private void refresh() {
        String log = presenter.fromLastTime();
        before.setText(log);
        before.setVisible(!log.isEmpty());
        onward.show(presenter.onward().ordinal());
        table.refresh();
        names.refresh();
        follow();
        boolean people = !desk.students().isEmpty();
        JComponent wanted = people ? both : empty();
        if (wanted.getParent() != this) {
            removeAll();
            add(wanted);
            if (people && isShowing()) {
                table.requestFocusInWindow();
            }
            revalidate();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (both != null) {
            Theme.dressAside(both, this);
            empty.ifPresent(kept -> Theme.dressAside(kept, this));
        }
    }

    /** With little width the strip alone names the lesson; with little height more students stand in place of words. */
    @Override
    public void doLayout() {
        boolean narrow = getWidth() < Space.points(NARROW);
        boolean low = getHeight() < Space.points(LOW);
        names.setNarrow(narrow);
        subheading.setVisible(!narrow);
        keys.setVisible(!low);
        keysInShort.setVisible(low);
        table.setLow(low);
        names.rowsAs(table);
        super.doLayout();
    }

    @Override
    public JComponent first() {
        return table;
    }
}
