package roundwright.desktop.counts;

import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.insight.Insights;
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
import roundwright.wording.Wording;

/** The card beside the counts: the chosen count, what stands below it, what was said of it before. */
final class DetailCard extends PageCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Insights insights;
    private final transient Deeds deeds;
    private final Stack body;

    DetailCard(Desk desk, Insights insights, Deeds deeds) {
        this(desk, insights, deeds, new Stack());
    }

    private DetailCard(Desk desk, Insights insights, Deeds deeds, Stack body) {
        super(body);
        this.desk = desk;
        this.insights = insights;
        this.deeds = deeds;
        this.body = body;
        refresh();
    }

    void refresh() {
        body.removeAll();
        CountDetail.of(desk).ifPresentOrElse(this::show, () -> body.below(0, Prose.muted(WORDS.say("detail-none"))));
        body.revalidate();
        repaint();
    }

    private void show(CountDetail detail) {
        Wrap head = body.below(0, new Wrap(0.75));
        head.add(Text.heading(detail.headline()));
        if (detail.cell().state().off()) {
            head.add(difference(detail));
        }
        body.below(1, Prose.muted(detail.below()));
        if (!detail.line().isEmpty()) {
            body.below(1.5, new WrittenLine(detail.line()));
        }
        desk.student()
                .flatMap(student -> insights.of(student.id()))
                .ifPresent(known -> detail.cell()
                        .current()
                        .flatMap(known::of)
                        .ifPresent(insight -> body.below(2.5, new InsightSection(desk, insight, known))));
        if (!detail.history().isEmpty()) {
            body.below(3, Prose.heading(WORDS.say("history")));
            detail.history().forEach(said -> body.below(0.75, Prose.body(said)));
        }
        if (!detail.note().isEmpty()) {
            body.below(3, Prose.heading(WORDS.say("note")));
            body.below(0.75, Prose.body(detail.note()));
        }
        Wrap buttons = body.below(3, new Wrap(1));
        buttons.add(deeds.button(Deed.NOTE));
        buttons.add(deeds.button(Deed.EDIT_STUDENT));
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
