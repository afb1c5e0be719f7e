package roundwright.desktop.stuck;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.course.Lesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.desk.Page;
import roundwright.desktop.insight.Insight;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.PageScroll;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.TwoCards;
import roundwright.desktop.look.TwoSteps;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.help.GroupPicture;
import roundwright.mistakes.help.Needs;
import roundwright.mistakes.help.Outlook;
import roundwright.mistakes.help.Reason;
import roundwright.mistakes.help.TroubleSpot;
import roundwright.wording.Wording;

/** Who needs help first and why; trouble spots; what to teach again; the outlook. */
public final class StuckPage extends JPanel implements FirstFocus, TwoSteps {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int MOST_NEEDS = 12;
    private static final int MOST_SPOTS = 5;
    private static final int MOST_OUTLOOKS = 3;
    private static final double WORTH_A_WARNING = 0.08;

    private final transient Desk desk;
    private final transient Insights insights;
    private final Stack left = new Stack();
    private final Stack right = new Stack();
    private final TwoCards cards;
    private boolean whole;

    public StuckPage(Desk desk, Insights insights) {
        super(new BorderLayout());
        this.desk = desk;
        this.insights = insights;
        setOpaque(false);
        cards = new TwoCards(new PageCard(left), 0.6);
        add(new PageScroll(cards));
        refresh();
        desk.listen(this::changed);
        insights.listen(this::refreshIfShown);
    }

    @Override
    public void beside() {
        if (!whole) {
            whole = true;
            cards.with(new PageCard(right));
            showGroup();
        }
    }

    private void changed(Set<Matter> matters) {
        boolean mine = matters.stream()
                .anyMatch(matter -> matter != Matter.PLACE
                        && matter != Matter.STUDENT
                        && matter != Matter.NOTICE
                        && matter != Matter.HISTORY);
        if (mine) {
            refreshIfShown();
        }
    }

    /** The picture takes a while to make: it is made anew only while the page is looked at. */
    private void refreshIfShown() {
        if (desk.choice().page() == Page.STUCK) {
            refresh();
        }
    }

    private void refresh() {
        left.removeAll();
        Optional<GroupPicture> picture = picture();
        if (picture.isPresent()) {
            showNeeds(picture.get());
        } else {
            left.below(0, Prose.heading(WORDS.say("stuck-head")));
            left.below(1, Prose.body(WORDS.say(insights.looking() ? "stuck-looking" : "stuck-nobody")));
        }
        left.revalidate();
        showGroup();
        repaint();
    }

    private Optional<GroupPicture> picture() {
        return desk.course().flatMap(course -> insights.picture());
    }

    private void showGroup() {
        right.removeAll();
        if (whole) {
            right.below(0, Prose.heading(WORDS.say("spots-head")));
            picture().ifPresent(picture -> showGroup(picture, desk.course().orElseThrow()));
        }
        right.revalidate();
    }

    private void showNeeds(GroupPicture picture) {
        List<Needs> stuck = picture.stuck();
        left.below(0, Prose.heading(WORDS.say("stuck-head")));
        if (insights.looking()) {
            left.below(0.5, Prose.muted(WORDS.say("stuck-looking")));
        }
        if (stuck.isEmpty()) {
            left.below(1, Prose.body(WORDS.say("stuck-none")));
        }
        boolean first = true;
        for (Needs needs : stuck.subList(0, Math.min(MOST_NEEDS, stuck.size()))) {
            left.below(first ? 1.5 : 0, row(needs));
            first = false;
        }
        if (stuck.size() > MOST_NEEDS) {
            left.below(1, Prose.muted(WORDS.say("stuck-more", stuck.size() - MOST_NEEDS)));
        }
    }

    private NeedRow row(Needs needs) {
        Student student = needs.student();
        Standing standing = desk.standing(student.id());
        Optional<RoundStanding> at = standing.position();
        String why = needs.reasons().stream().map(Reason::words).collect(Collectors.joining(" "));
        String where = at.map(round -> WORDS.say(
                        "part-and-number", round.place().part(), round.place().round()))
                .orElse("");
        return new NeedRow(Names.of(student, desk), where, why, advice(student.id(), at), () -> open(needs, at));
    }

    private Optional<String> advice(StudentId student, Optional<RoundStanding> at) {
        return at.flatMap(round -> insights.of(student, round))
                .flatMap(Insight::advice)
                .map(advice -> advice.best().words());
    }

    /** Opens the student's counts where the weightiest reason points, or where they are. */
    private void open(Needs needs, Optional<RoundStanding> at) {
        desk.chooseStudent(needs.student().id());
        Optional<RoundPlace> evidence = needs.reasons().stream()
                .flatMap(reason -> reason.evidence().stream())
                .findFirst();
        at.map(RoundStanding::place).or(() -> evidence).ifPresent(desk::choosePlace);
        desk.choosePage(Page.COUNTS);
    }

    @Override
    public JComponent first() {
        return Stream.of(left.getComponents())
                .filter(NeedRow.class::isInstance)
                .map(row -> ((NeedRow) row).button())
                .findFirst()
                .orElse(this);
    }

    private void showGroup(GroupPicture picture, OpenCourse course) {
        Sentences sentences = new Sentences(course.terms());
        List<TroubleSpot> spots = picture.troubleSpots();
        if (spots.isEmpty()) {
            right.below(1, Prose.body(WORDS.say("spots-none")));
        }
        spots.stream()
                .limit(MOST_SPOTS)
                .forEach(spot -> right.below(
                        1,
                        new SpotRow(
                                spot,
                                course.round(spot.place())
                                        .map(round -> round.line().text())
                                        .orElse(""),
                                spot.words(sentences))));
        right.below(3, Prose.heading(WORDS.say("teach-head")));
        if (picture.teachAgain().isEmpty()) {
            right.below(0.75, Prose.body(WORDS.say("teach-none")));
        }
        picture.teachAgain().forEach(again -> right.below(0.75, Prose.body(again.words(sentences))));
        showOutlook(picture, course, sentences);
    }

    private void showOutlook(GroupPicture picture, OpenCourse course, Sentences sentences) {
        Optional<Lesson> next = desk.lesson().flatMap(lesson -> course.lesson(lesson.number() + 1));
        if (next.isEmpty()) {
            return;
        }
        right.below(
                3,
                Prose.heading(WORDS.say(
                        "outlook-head", next.get().number(), next.get().name())));
        List<Outlook> outlooks = picture.outlook(course.places(next.get())).stream()
                .filter(outlook -> outlook.wrong() >= WORTH_A_WARNING)
                .limit(MOST_OUTLOOKS)
                .toList();
        if (outlooks.isEmpty()) {
            right.below(0.75, Prose.body(WORDS.say("outlook-none")));
        }
        int students = desk.students().size();
        outlooks.forEach(outlook -> right.below(0.75, Prose.body(outlook.words(students, sentences))));
    }
}
