package roundwright.desktop.window;

import java.awt.BorderLayout;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import roundwright.course.Lesson;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.chart.ChartSaver;
import roundwright.desktop.counts.CountsPage;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.desk.Page;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Sight;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.TwoSteps;
import roundwright.desktop.next.NextPage;
import roundwright.desktop.plan.PlanPage;
import roundwright.desktop.planning.LessonsOnStrip;
import roundwright.desktop.safety.SafetyDeeds;
import roundwright.desktop.strip.StripPanel;
import roundwright.desktop.strip.StripPresenter;
import roundwright.desktop.stuck.StuckPage;
import roundwright.desktop.welcome.WelcomePage;
import roundwright.group.CourseId;
import roundwright.group.RoundPlace;
import roundwright.mistakes.help.TroubleSpot;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** Everything in the window: the head, the strip, the page, and what lies over them. Needs no frame. */
public final class MainPanel extends JPanel implements Asking {
    private static final Wording WORDS = Wording.of("desktop");
    private static final Runnable NOTHING = () -> {};

    private final transient Desk desk;
    private final transient Insights insights;
    private final transient Deeds deeds = new Deeds(() -> !asking());
    private final transient ChartSaver charts;
    private final transient StripPresenter stripPresenter;
    private final Header header;
    private final StripPanel strip;
    private final JPanel holder = new JPanel(new BorderLayout());
    private final NoticeBar notice;
    private final Overlay overlay = new Overlay();
    private final transient Map<Page, JComponent> pages = new EnumMap<>(Page.class);
    private final transient PropertyChangeListener following = this::follow;
    private WelcomePage welcome;
    private transient boolean begun;
    private transient Runnable beside = NOTHING;
    private transient Runnable painted = NOTHING;
    private transient Optional<CourseId> shownCourse = Optional.empty();

    public MainPanel(Desk desk, Insights insights, Frame frame) {
        super(null);
        this.desk = desk;
        this.insights = insights;
        setBackground(Tone.BACKGROUND.color());
        charts = new ChartSaver(desk, frame::chooseTarget);
        stripPresenter = new StripPresenter(desk);
        header = new Header(deeds, () -> new Menus(desk, deeds).courses(header().course()), this::openMenu);
        strip = new StripPanel(stripPresenter::choose);
        strip.edges(new LessonsOnStrip(desk, stripPresenter));
        notice = new NoticeBar(desk::clearNotice);
        new WindowDeeds(desk, insights, deeds, this, frame).bind();
        SheetDeeds.bind(desk, deeds, this, frame);
        SafetyDeeds.bind(desk, deeds, this, frame::chooseDataFile, frame::chooseTarget);
        TableDeeds.bind(desk, deeds, this, frame);
        holder.setOpaque(false);
        add(overlay);
        add(header);
        add(strip);
        add(notice);
        add(holder);
        deeds.bind(this);
        insights.listen(this::showStrip);
        header.pages().setVisible(desk.course().isPresent());
        desk.listen(this::changed);
    }

    /** Shows what is in hand: the head and the strip, and then the page. */
    public MainPanel begin() {
        begun = true;
        changed(Set.of(Matter.values()));
        return this;
    }

    /** Whatever gets the focus is scrolled into sight. */
    private void follow(java.beans.PropertyChangeEvent event) {
        if (event.getNewValue() instanceof JComponent focused
                && SwingUtilities.isDescendingFrom(focused, this)
                && !(focused instanceof javax.swing.JTable)) {
            Sight.bring(focused, new Rectangle(focused.getSize()));
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener("focusOwner", following);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener("focusOwner", following);
        super.removeNotify();
    }

    private Header header() {
        return header;
    }

    public Deeds deeds() {
        return deeds;
    }

    public StripPanel strip() {
        return strip;
    }

    private void openMenu() {
        new Menus(desk, deeds).everything(header.more());
    }

    @Override
    public void ask(Question question) {
        overlay.show(question.card(), question.width(), question.first());
        revalidate();
        repaint();
    }

    @Override
    public void close() {
        overlay.close();
        repaint();
    }

    /** Whether a card lies over the page. */
    public boolean asking() {
        return overlay.open();
    }

    private void changed(Set<Matter> matters) {
        showNotice();
        showHistory();
        showHead();
        if (!Matter.ASIDE.containsAll(matters)) {
            showStrip();
        }
        if (begun && (matters.contains(Matter.PAGE) || matters.contains(Matter.COURSE))) {
            turn();
        }
    }

    /** Turns to the page in hand. In a window one that has to be made first is made in an event of its own, and laid out in another. */
    private void turn() {
        if (isShowing() && !made()) {
            SwingUtilities.invokeLater(() -> {
                inHand();
                SwingUtilities.invokeLater(this::turnNow);
            });
        } else {
            turnNow();
        }
    }

    private void turnNow() {
        boolean other = showPage();
        revalidate();
        holder.repaint();
        if (isShowing()) {
            validate();
        }
        if (other) {
            focusOnPage();
        }
    }

    private boolean made() {
        return desk.course().isPresent() ? pages.containsKey(desk.choice().page()) : welcome != null;
    }

    private JComponent inHand() {
        return desk.course().isPresent() ? page(desk.choice().page()) : welcome();
    }

    private void showNotice() {
        String sentence = desk.notice().orElse("");
        if (!sentence.equals(notice.sentence())) {
            notice.show(sentence);
            revalidate();
            repaint();
        }
    }

    private void showHistory() {
        var workbook = desk.workbook();
        deeds.enable(Deed.UNDO, workbook.undoName().isPresent());
        deeds.enable(Deed.REDO, workbook.redoName().isPresent());
        deeds.call(Deed.UNDO, workbook.undoName().orElse(Deed.UNDO.words()));
        deeds.call(Deed.REDO, workbook.redoName().orElse(Deed.REDO.words()));
    }

    private void showHead() {
        String name = desk.course().map(course -> course.kept().name()).orElse(WORDS.say("window-title"));
        header.course().show(name, desk.course().map(this::inHand).orElse(""));
    }

    /** "Tuesday evenings · lesson 3 of 8 · UK terms". */
    private String inHand(OpenCourse course) {
        if (Names.hidden(desk)) {
            return WORDS.say("names-are-hidden");
        }
        StringBuilder said = new StringBuilder();
        desk.group()
                .map(GroupView::group)
                .ifPresent(group -> said.append(group.name()).append(" · "));
        desk.lesson()
                .map(Lesson::number)
                .ifPresent(number -> said.append(WORDS.say(
                                "lesson-of", number, course.course().lessons().size()))
                        .append(" · "));
        return said.append(WORDS.say("terms", course.terms())).toString();
    }

    private void showStrip() {
        if (strip.isVisible() != desk.course().isPresent()) {
            strip.setVisible(desk.course().isPresent());
            revalidate();
        }
        strip.show(stripPresenter.piece(), stripPresenter.marks(troubles()));
        if (strip.chosen() != stripPresenter.chosen()) {
            strip.setChosen(stripPresenter.chosen());
        }
    }

    private Set<RoundPlace> troubles() {
        return insights.lastPicture()
                .map(picture ->
                        picture.troubleSpots().stream().map(TroubleSpot::place).collect(Collectors.toSet()))
                .orElse(Set.of());
    }

    /** Shows the page in hand; whether another page, or another course's, was shown before. */
    private boolean showPage() {
        JComponent wanted = inHand();
        Optional<CourseId> course = desk.course().map(open -> open.kept().id());
        boolean other = wanted.getParent() != holder || !course.equals(shownCourse);
        shownCourse = course;
        if (wanted.getParent() != holder) {
            holder.removeAll();
            holder.add(wanted);
            header.pages().show(desk.choice().page());
            besideLater(wanted);
        }
        header.pages().setVisible(desk.course().isPresent());
        return other;
    }

    /** In a window what stands beside the page's first card comes when that has been painted. */
    private void besideLater(JComponent page) {
        if (page instanceof TwoSteps steps && isShowing()) {
            beside = steps::beside;
        } else if (page instanceof TwoSteps steps) {
            steps.beside();
        }
    }

    /** The keys go to what the page is for, unless something is asked by then. */
    private void focusOnPage() {
        if (isShowing()) {
            JComponent page = shownPage();
            SwingUtilities.invokeLater(() -> {
                if (!asking() && page.isShowing()) {
                    (page instanceof FirstFocus focus ? focus.first() : page).requestFocusInWindow();
                }
            });
        }
    }

    private JComponent welcome() {
        if (welcome == null) {
            welcome = new WelcomePage(desk, deeds);
        }
        return welcome;
    }

    /** Pages are made when they are first looked at. */
    private JComponent page(Page page) {
        return pages.computeIfAbsent(page, wanted -> switch (wanted) {
            case PLAN -> new PlanPage(desk, deeds, this, charts);
            case COUNTS -> new CountsPage(desk, insights, deeds);
            case NEXT -> new NextPage(desk, insights, deeds, charts);
            case STUCK -> new StuckPage(desk, insights);
        });
    }

    /** Does something once, when the course in hand, or the welcome, has been painted and the keys before it are taken. */
    public void whenPainted(Runnable does) {
        painted = does;
        repaint();
    }

    @Override
    protected void paintChildren(java.awt.Graphics graphics) {
        super.paintChildren(graphics);
        boolean whole = holder.getComponentCount() > 0
                && (desk.course().isPresent() || desk.work().waiting() == 0);
        if (beside != NOTHING || painted != NOTHING && whole) {
            Runnable first = beside;
            Runnable last = whole ? painted : NOTHING;
            beside = NOTHING;
            painted = whole ? NOTHING : painted;
            SwingUtilities.invokeLater(() -> {
                first.run();
                // after the layout and the painting that the first has asked for
                SwingUtilities.invokeLater(last);
            });
        }
    }

    /** The page that is shown. */
    public JComponent shownPage() {
        return (JComponent) holder.getComponent(0);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Tone.BACKGROUND.color());
        if (pages != null) {
            pages.values().forEach(page -> Theme.dressAside(page, holder));
            Theme.dressAside(welcome, holder);
        }
    }

    @Override
    public void doLayout() {
        int edge = Space.of(getWidth() < Space.points(900) ? 1.5 : 3);
        int width = getWidth() - 2 * edge;
        int y = Space.of(1);
        int head = header.getPreferredSize().height;
        header.setBounds(edge, y, width, head);
        y += head + Space.of(0.5);
        if (notice.isVisible()) {
            int high = Flowing.heightOf(notice, width);
            notice.setBounds(edge, y, width, high);
            y += high + Space.of(1);
        }
        if (strip.isVisible()) {
            strip.setBounds(edge, y, width, stripHeight());
            y += stripHeight() + Space.of(1.5);
        }
        holder.setBounds(edge, y, width, Math.max(0, getHeight() - y - edge));
        overlay.setBounds(0, 0, getWidth(), getHeight());
    }

    /** About a quarter of the window, and never so high that nothing is left for the page. */
    private int stripHeight() {
        return Math.max(Space.points(84), Math.min(Space.points(206), (int) (getHeight() * 0.235)));
    }
}
