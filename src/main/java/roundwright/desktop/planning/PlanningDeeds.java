package roundwright.desktop.planning;

import java.util.List;
import java.util.Set;
import roundwright.course.planning.PlannedLesson;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Page;
import roundwright.wording.Wording;

/** Says what the deeds of planning do, and which can be done now. Lessons are moved by hand on the plan's own page alone. */
public final class PlanningDeeds {
    private static final Wording WORDS = Wording.of("desktop");

    /** What is done to the chosen lesson. */
    public static final List<Deed> BY_HAND = List.of(
            Deed.RENAME_LESSON,
            Deed.LESSON_EARLIER,
            Deed.LESSON_LATER,
            Deed.LESSON_HERE,
            Deed.JOIN_LESSONS,
            Deed.LOCK_LESSON);

    private final Desk desk;
    private final Deeds deeds;
    private final LessonsByHand lessons;

    public PlanningDeeds(Desk desk, Deeds deeds, LessonsByHand lessons) {
        this.desk = desk;
        this.deeds = deeds;
        this.lessons = lessons;
    }

    public void bind(Asking asking) {
        deeds.on(Deed.RENAME_LESSON, () -> asking.ask(new RenameLessonCard(lessons, asking)));
        deeds.on(Deed.LESSON_EARLIER, () -> lessons.moveStart(-1));
        deeds.on(Deed.LESSON_LATER, () -> lessons.moveStart(1));
        deeds.on(Deed.LESSON_HERE, lessons::beginHere);
        deeds.on(Deed.JOIN_LESSONS, lessons::join);
        deeds.on(Deed.LOCK_LESSON, lessons::lock);
        desk.listen(this::changed);
        enable();
    }

    private void changed(Set<Matter> matters) {
        enable();
    }

    /** Looks again at what can be done. */
    public void enable() {
        boolean here = desk.choice().page() == Page.PLAN && lessons.lesson().isPresent();
        deeds.enable(Deed.RENAME_LESSON, here);
        deeds.enable(Deed.LOCK_LESSON, here);
        deeds.enable(Deed.LESSON_EARLIER, here && lessons.hasBefore());
        deeds.enable(Deed.LESSON_LATER, here && lessons.hasBefore());
        deeds.enable(Deed.LESSON_HERE, here && lessons.canBeginHere());
        deeds.enable(Deed.JOIN_LESSONS, here && lessons.hasNext());
        boolean locked = lessons.lesson().filter(PlannedLesson::locked).isPresent();
        deeds.call(Deed.LOCK_LESSON, locked ? WORDS.say("unlock-lesson") : Deed.LOCK_LESSON.words());
    }
}
