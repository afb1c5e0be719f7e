package roundwright.desktop.planning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.course.Lesson;
import roundwright.course.planning.PlannedLesson;
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

/** The chosen lesson: what can be done to it, where its minutes go, what should be known of it, what to get ready. */
public final class LessonCard extends PageCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient ChosenLesson chosen;
    private final transient LessonWords words;
    private final transient Deeds deeds;
    private final Stack body;

    public LessonCard(Desk desk, ChosenLesson chosen, Deeds deeds) {
        this(desk, chosen, deeds, new Stack());
    }

    private LessonCard(Desk desk, ChosenLesson chosen, Deeds deeds, Stack body) {
        super(body);
        this.desk = desk;
        this.chosen = chosen;
        this.words = new LessonWords(desk);
        this.deeds = deeds;
        this.body = body;
        desk.listen(this::changed);
    }

    private void changed(Set<Matter> matters) {
        boolean mine = matters.contains(Matter.COURSE) || matters.contains(Matter.PLACE);
        if (mine && isVisible()) {
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

    /** Shows the lesson in hand as it is now. */
    public void refresh() {
        body.removeAll();
        Optional<Lesson> lesson = chosen.lesson();
        if (lesson.isEmpty()) {
            body.below(0, Prose.muted(WORDS.say("lesson-none")));
        } else {
            show(lesson.get());
        }
        body.revalidate();
        body.repaint();
    }

    private void show(Lesson lesson) {
        String name = WORDS.say("lesson-named", lesson.number(), lesson.name());
        body.below(0, new Prose(name, Type.HEADING, Type.HEADING, Tone.INK));
        if (lesson.locked()) {
            body.below(0.5, Prose.muted(WORDS.say("lesson-is-locked")));
        }
        Wrap buttons = new Wrap(1);
        for (Deed deed : PlanningDeeds.BY_HAND) {
            buttons.add(deeds.button(deed));
        }
        body.below(1.5, buttons);
        planned().ifPresent(planned -> {
            body.below(1.5, Prose.body(words.minutes(planned)));
            words.atHome(planned).ifPresent(text -> body.below(0.5, Prose.muted(text)));
        });
        for (String remark : words.remarks(lesson, planned())) {
            body.below(1, new Prose(remark, Type.BODY, Type.STRONG, Tone.MARIGOLD));
        }
        planned().ifPresent(planned -> new ReadyList(body).add(words.ready(planned)));
        ownWords(lesson);
    }

    private Optional<PlannedLesson> planned() {
        return desk.course()
                .flatMap(open -> open.plan())
                .flatMap(plan ->
                        chosen.planned().stream().mapToObj(plan.lessons()::get).findFirst());
    }

    private void ownWords(Lesson lesson) {
        List<String> said = words.own(lesson);
        if (!said.isEmpty()) {
            body.below(2, Prose.of(WORDS.say("lesson-own-words"), Type.SMALL_STRONG, Tone.INK));
            said.forEach(line -> body.below(0.75, Prose.body(line)));
        }
    }
}
