package roundwright.desktop.next;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.chart.ChartSaver;
import roundwright.desktop.chart.ChartView;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.desk.Page;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.PageScroll;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.TwoCards;
import roundwright.desktop.look.TwoSteps;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.look.WrittenLine;
import roundwright.group.Student;
import roundwright.mistakes.help.Mastery;
import roundwright.wording.Wording;

/** One student's page. */
public final class NextPage extends JPanel implements FirstFocus, TwoSteps {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Insights insights;
    private final transient Deeds deeds;
    private final Stack left = new Stack();
    private final Stack right = new Stack();
    private final PageCard student = new PageCard(left);
    private final TwoCards cards;
    private boolean whole;
    private final ChartView chart;
    private transient Optional<TechniqueWay> way = Optional.empty();
    private transient Optional<StudentPage> page = Optional.empty();

    public NextPage(Desk desk, Insights insights, Deeds deeds, ChartSaver saver) {
        super(new BorderLayout());
        this.desk = desk;
        this.insights = insights;
        this.deeds = deeds;
        setOpaque(false);
        chart = new ChartView(saver, Prose.page(""));
        student.setBorder(Space.pad(3, 3.5, 3, 3.5));
        cards = new TwoCards(student, 0.6);
        add(new PageScroll(cards));
        refresh();
        desk.listen(this::changed);
        insights.listen(() -> changed(Set.of(Matter.COUNTS)));
    }

    @Override
    public void beside() {
        if (!whole) {
            whole = true;
            cards.with(new PageCard(right));
            showWay();
        }
    }

    /** Nothing is worked out for a page that is not looked at; when it is, everything is. */
    private void changed(Set<Matter> matters) {
        if (desk.choice().page() == Page.NEXT && !Matter.ASIDE.containsAll(matters)) {
            refresh();
        }
    }

    private void refresh() {
        left.removeAll();
        page = desk.course().flatMap(course -> desk.student().map(student -> page(course, student)));
        page.ifPresentOrElse(this::show, this::showNobody);
        left.revalidate();
        showWay();
        repaint();
    }

    private StudentPage page(OpenCourse course, Student student) {
        List<Mastery> mastery =
                insights.picture().map(picture -> picture.mastery(student.id())).orElse(List.of());
        return StudentPage.of(wayThrough(course), student, desk.standing(student.id()), mastery);
    }

    private void showNobody() {
        left.below(0, Prose.heading(WORDS.say("no-students-head")));
        left.below(1, Prose.body(WORDS.say("next-nobody")));
        left.below(2, new Wrap(1)).add(deeds.mainButton(Deed.ADD_STUDENTS));
    }

    private TechniqueWay wayThrough(OpenCourse course) {
        if (way.filter(found -> found.course() == course).isEmpty()) {
            way = Optional.of(new TechniqueWay(course));
        }
        return way.get();
    }

    private void show(StudentPage page) {
        left.below(0, who(page.name()));
        left.below(1, new Prose(page.title(), Type.TITLE, Type.TITLE, Tone.INK));
        if (!page.where().isEmpty()) {
            left.below(1.5, Prose.page(page.where()));
        }
        page.round()
                .ifPresent(round -> left.below(2, new WrittenLine(round.line().text(), Type.PAGE_HEADING)));
        page.round()
                .map(round -> round.line().words())
                .filter(said -> !said.isBlank())
                .ifPresent(said -> left.below(2, Prose.page(said)));
        if (!page.counts().isEmpty()) {
            left.below(1.5, Prose.page("**" + page.counts() + "**"));
        }
        showHow(page);
        page.chart().ifPresent(subject -> {
            chart.show(subject);
            left.below(3, chart);
        });
    }

    private void showWay() {
        right.removeAll();
        if (whole) {
            page.ifPresent(this::showWay);
        }
        right.revalidate();
    }

    private void showWay(StudentPage shown) {
        right.below(0, Prose.of(WORDS.say("way-head"), Type.PAGE_STRONG, Tone.INK));
        shown.way()
                .forEach(each -> right.below(
                        0.25, new WayRow(each, way.orElseThrow().course().terms())));
        Wrap buttons = right.below(3, new Wrap(1));
        buttons.add(deeds.mainButton(Deed.STUDENT_SHEET));
        buttons.add(deeds.button(Deed.STUDENT_WEB_PAGE));
    }

    /** The chart, to go through it; where it is out of sight the page, which then begins at its top. */
    @Override
    public JComponent first() {
        if (student.scroll().isFocusable()) {
            return student.scroll();
        }
        return chart.getParent() == null ? this : chart.panel();
    }

    private void showHow(StudentPage page) {
        if (!page.how().isEmpty()) {
            left.below(3, Prose.of(WORDS.say("next-how"), Type.PAGE_STRONG, Tone.INK));
            for (int i = 0; i < page.how().size(); i++) {
                left.below(
                        0.75, Prose.page(WORDS.say("numbered", i + 1, page.how().get(i))));
            }
        }
        if (!page.watch().isEmpty()) {
            left.below(1.5, new Prose(page.watch(), Type.PAGE, Type.PAGE_STRONG, Tone.MUTED));
        }
    }

    /** The name, with a way to the student before and the one after. */
    private Wrap who(String name) {
        Wrap who = new Wrap(0.5);
        who.add(deeds.iconButton(Deed.STUDENT_BEFORE));
        who.add(new Text(name, Type.PAGE, Tone.MUTED));
        who.add(deeds.iconButton(Deed.STUDENT_AFTER));
        return who;
    }
}
