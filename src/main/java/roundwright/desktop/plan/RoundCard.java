package roundwright.desktop.plan;

import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import roundwright.desktop.chart.ChartSaver;
import roundwright.desktop.chart.ChartSubject;
import roundwright.desktop.chart.ChartView;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Chip;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.look.WrittenLine;
import roundwright.group.RoundPlace;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Round;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** The chosen round: as it is written, in plain words, its sum, its chart. */
public final class RoundCard extends PageCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final Stack body;
    private final ChartView chart;
    private final JButton turning = Buttons.quiet("", this::turn);
    private transient Optional<Round> shown = Optional.empty();
    private transient Optional<OtherTerms> other = Optional.empty();
    private boolean inOther;

    public RoundCard(Desk desk, ChartSaver saver) {
        this(desk, saver, new Stack());
    }

    private RoundCard(Desk desk, ChartSaver saver, Stack body) {
        super(body);
        this.desk = desk;
        this.body = body;
        this.chart = new ChartView(saver, Prose.muted(""));
        refresh();
        desk.listen(this::changed);
    }

    /** Nothing is worked out for a page that is not looked at; when it is, everything is. */
    private void changed(Set<Matter> matters) {
        if (desk.choice().page() == Page.PLAN
                && (matters.contains(Matter.COURSE)
                        || matters.contains(Matter.PLACE)
                        || matters.contains(Matter.PAGE))) {
            refresh();
        }
    }

    private void refresh() {
        Optional<Round> round = desk.course().flatMap(course -> desk.place().flatMap(course::round));
        if (round.isPresent() && round.equals(shown)) {
            return;
        }
        shown = round;
        body.removeAll();
        desk.course()
                .ifPresent(course -> desk.place()
                        .ifPresent(place -> course.round(place).ifPresent(found -> show(course, place, found))));
        if (round.isEmpty()) {
            body.below(0, Prose.muted(WORDS.say("round-none")));
        }
        body.revalidate();
        body.repaint();
    }

    /** Shows the rounds in the terms that the pattern is not written in, or again in its own. */
    private void turn() {
        inOther = !inOther;
        shown = Optional.empty();
        refresh();
        turning.requestFocusInWindow();
    }

    private OtherTerms other(OpenCourse course) {
        if (other.filter(found -> found.course() == course).isEmpty()) {
            other = Optional.of(new OtherTerms(course));
        }
        return other.get();
    }

    private void show(OpenCourse course, RoundPlace place, Round written) {
        Optional<Round> turned = inOther ? other(course).round(place) : Optional.empty();
        Terms terms = turned.isPresent() ? course.terms().other() : course.terms();
        body.below(0, Prose.heading(WORDS.say("part-round", place.part(), place.round())));
        body.below(1.25, new WrittenLine(turned.orElse(written).line().text()));
        turned.ifPresent(round -> body.below(0.75, Prose.muted(WORDS.say("terms-shown", terms, course.terms()))));
        show(course, place, turned.orElse(written), terms);
        turning.setText(WORDS.say("terms-turn", terms.other()));
        body.below(2, new Wrap(1)).add(turning);
    }

    private void show(OpenCourse course, RoundPlace place, Round round, Terms terms) {
        Line line = round.line();
        if (!line.words().isBlank()) {
            body.below(1.5, Prose.body(line.words()));
        }
        if (!line.sum().isBlank()) {
            body.below(1, Prose.muted(line.sum()));
        }
        line.problems()
                .forEach(problem -> body.below(1, new Prose(problem.message(), Type.BODY, Type.STRONG, Tone.MARIGOLD)));
        chips(course, place, terms);
        round.steps().ifPresent(steps -> {
            String title = WORDS.say("part-round", place.part(), place.round());
            chart.show(new ChartSubject(title, steps, terms, course.chart(place, false)));
            body.below(2, chart);
        });
    }

    private void chips(OpenCourse course, RoundPlace place, Terms terms) {
        Wrap chips = new Wrap(0.75);
        for (Technique technique : course.newIn(place)) {
            chips.add(new Chip(WORDS.say("new-here", technique.name(terms))));
        }
        if (chips.getComponentCount() > 0) {
            body.below(1.5, chips);
        }
    }
}
