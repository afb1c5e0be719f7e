package roundwright.desktop.counts;

import java.util.Optional;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.insight.StudentInsights;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.MarkIcon;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.look.WrittenLine;
import roundwright.group.Student;
import roundwright.wording.Wording;

/** The card beside the counts: the chosen count, what stands below it, what was said of it before. */
final class DetailCard extends PageCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Insights insights;
    private final Stack body;
    private final Wrap buttons = new Wrap(1);
    private transient Shown shown = new Shown(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** What the card shows; an explanation is the same only while it has not been worked out anew. */
    private record Shown(
            Optional<OpenCourse> course,
            Optional<Student> student,
            Optional<CountDetail> detail,
            Optional<StudentInsights> known) {
        boolean sameAs(Shown other) {
            return course.orElse(null) == other.course.orElse(null)
                    && student.equals(other.student)
                    && detail.equals(other.detail)
                    && known.orElse(null) == other.known.orElse(null);
        }
    }

    DetailCard(Desk desk, Insights insights, Deeds deeds) {
        this(desk, insights, deeds, new Stack());
    }

    private DetailCard(Desk desk, Insights insights, Deeds deeds, Stack body) {
        super(body);
        this.desk = desk;
        this.insights = insights;
        this.body = body;
        buttons.add(deeds.button(Deed.NOTE));
        buttons.add(deeds.button(Deed.EDIT_STUDENT));
        show(shown);
        refresh();
    }

    void refresh() {
        Shown now = new Shown(
                desk.course(),
                desk.student(),
                CountDetail.of(desk),
                desk.student().flatMap(student -> insights.of(student.id())));
        if (!now.sameAs(shown)) {
            show(now);
        }
    }

    private void show(Shown now) {
        shown = now;
        body.removeAll();
        now.detail()
                .ifPresentOrElse(
                        detail -> show(detail, now.known()),
                        () -> body.below(0, Prose.muted(WORDS.say("detail-none"))));
        buttons.setVisible(now.detail().isPresent());
        body.below(3, buttons);
        body.revalidate();
        repaint();
    }

    private void show(CountDetail detail, Optional<StudentInsights> known) {
        Wrap head = body.below(0, new Wrap(0.75));
        head.add(Text.heading(detail.headline()));
        if (detail.cell().state().off()) {
            head.add(difference(detail));
        }
        body.below(1, Prose.muted(detail.below()));
        if (!detail.line().isEmpty()) {
            body.below(1.5, new WrittenLine(detail.line()));
        }
        known.ifPresent(insights -> detail.cell()
                .current()
                .flatMap(insights::of)
                .ifPresent(insight -> body.below(2.5, new InsightSection(desk, insight, insights))));
        if (!detail.history().isEmpty()) {
            body.below(3, Prose.heading(WORDS.say("history")));
            detail.history().forEach(said -> body.below(0.75, Prose.body(said)));
        }
        if (!detail.note().isEmpty()) {
            body.below(3, Prose.heading(WORDS.say("note")));
            body.below(0.75, Prose.body(detail.note()));
        }
    }

    private static Text difference(CountDetail detail) {
        int difference = detail.cell().difference();
        Mark mark = difference > 0 ? Mark.OVER : Mark.UNDER;
        Tone tone = difference > 0 ? Tone.OVER : Tone.UNDER;
        Text text = new Text(String.valueOf(Math.abs(difference)), Type.HEADING, tone);
        text.setIcon(new MarkIcon(mark, 12));
        text.getAccessibleContext().setAccessibleName(CountWords.of(detail.cell()));
        return text;
    }
}
