package roundwright.desktop.planning;

import java.util.List;
import java.util.Set;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** The whole course: what to get ready for it, and in which order its techniques come. */
public final class CourseCard extends PageCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient CourseWords words;
    private final Stack body;
    private final transient Deeds deeds;

    public CourseCard(Desk desk, Deeds deeds) {
        this(desk, deeds, new Stack());
    }

    private CourseCard(Desk desk, Deeds deeds, Stack body) {
        super(body);
        this.words = new CourseWords(desk);
        this.body = body;
        this.deeds = deeds;
        desk.listen(this::changed);
    }

    private void changed(Set<Matter> matters) {
        if (matters.contains(Matter.COURSE) && isVisible()) {
            refresh();
        }
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            refresh();
        }
    }

    private void refresh() {
        body.removeAll();
        Wrap buttons = new Wrap(1);
        for (Deed deed : List.of(Deed.DATES, Deed.PLAN_REST)) {
            buttons.add(deeds.button(deed));
        }
        body.below(0, buttons);
        body.below(2, Prose.heading(WORDS.say("course-ready")));
        new ReadyList(body).add(words.ready());
        body.below(2.5, Prose.heading(WORDS.say("technique-order")));
        for (CourseWords.Step step : words.order()) {
            body.below(1.25, Prose.of(step.lesson(), Type.SMALL_STRONG, Tone.MUTED));
            step.techniques().forEach(line -> body.below(0.5, Prose.body(line)));
        }
        body.revalidate();
        body.repaint();
    }
}
