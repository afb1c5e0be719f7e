package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.planning.Plan.Slot;
import roundwright.wording.Wording;

/**
 * A plan changed by hand. Every function gives a new plan with minutes, new techniques and costs worked out again, and leaves
 * the one it was given alone. Lessons are counted from 0, items are places in {@link Plan#items}.
 *
 * <p>A locked lesson keeps its items: what would change them is refused, in words for the teacher.
 */
public final class ByHand {
    private static final Wording WORDS = Wording.of("course");

    private ByHand() {}

    /**
     * Makes {@code first} the first item of a lesson: the lesson before takes or gives up the items between. Its homework grows
     * or shrinks with the boundary while all of it may be given as homework, and is taken into class otherwise.
     *
     * @param lesson the second of the two lessons concerned, from 1
     */
    public static Plan moveStart(Plan plan, int lesson, int first) throws CannotPlan {
        Stretch before = slot(plan, lesson - 1).stretch();
        Stretch after = slot(plan, lesson).stretch();
        if (first <= before.from() || first > after.last()) {
            throw new CannotPlan(WORDS.say("plan-lesson-emptied", number(plan, lesson - 1), number(plan, lesson)));
        }
        List<Slot> slots = unlocked(plan, lesson - 1, lesson);
        setStretch(slots, lesson - 1, endingBefore(plan, before, first));
        setStretch(slots, lesson, new Stretch(first, Math.max(first, after.to()), after.last()));
        return rebuilt(plan, slots);
    }

    private static Stretch endingBefore(Plan plan, Stretch stretch, int first) {
        int to = Math.min(stretch.to(), first - 1);
        boolean mayGive = stretch.hasHomework()
                && plan.items().subList(to + 1, first).stream().allMatch(PlanItem::homework);
        return new Stretch(stretch.from(), mayGive ? to : first - 1, first - 1);
    }

    /** Makes {@code to} the last item that a lesson does in class; its later items become homework. */
    public static Plan giveHomework(Plan plan, int lesson, int to) throws CannotPlan {
        Stretch stretch = slot(plan, lesson).stretch();
        if (to < stretch.from() || to > stretch.last()) {
            throw new CannotPlan(WORDS.say("plan-not-in-lesson", number(plan, lesson)));
        }
        Optional<PlanItem> unfit = plan.items().subList(to + 1, stretch.last() + 1).stream()
                .filter(item -> !item.homework())
                .findFirst();
        if (unfit.isPresent()) {
            throw new CannotPlan(WORDS.say("plan-not-homework", ItemWords.name(unfit.get())));
        }
        List<Slot> slots = unlocked(plan, lesson);
        setStretch(slots, lesson, new Stretch(stretch.from(), to, stretch.last()));
        return rebuilt(plan, slots);
    }

    /** Makes one lesson of a lesson and the next; the homework between them is done in class. */
    public static Plan merge(Plan plan, int lesson) throws CannotPlan {
        Slot one = slot(plan, lesson);
        Slot two = slot(plan, lesson + 1);
        List<Slot> slots = unlocked(plan, lesson, lesson + 1);
        Stretch both = new Stretch(
                one.stretch().from(), two.stretch().to(), two.stretch().last());
        slots.set(lesson, new Slot(both, one.name().or(two::name), false));
        slots.remove(lesson + 1);
        return rebuilt(plan, slots);
    }

    /** Makes two lessons of one, the second beginning at an item; items of the homework are then worked in class. */
    public static Plan split(Plan plan, int lesson, int first) throws CannotPlan {
        Slot whole = slot(plan, lesson);
        Stretch stretch = whole.stretch();
        if (first <= stretch.from() || first > stretch.last()) {
            throw new CannotPlan(WORDS.say("plan-not-in-lesson", number(plan, lesson)));
        }
        List<Slot> slots = unlocked(plan, lesson);
        Stretch one = new Stretch(stretch.from(), Math.min(stretch.to(), first - 1), first - 1);
        Stretch two = new Stretch(first, Math.max(first, stretch.to()), stretch.last());
        slots.set(lesson, new Slot(one, whole.name(), false));
        slots.add(lesson + 1, new Slot(two, Optional.empty(), false));
        return rebuilt(plan, slots);
    }

    /** Locks a lesson, so that planning anew keeps its items together, or unlocks it. */
    public static Plan lock(Plan plan, int lesson, boolean locked) {
        List<Slot> slots = slots(plan);
        slots.set(
                lesson, new Slot(slots.get(lesson).stretch(), slots.get(lesson).name(), locked));
        return Plan.of(plan.items(), plan.settings(), plan.sessionsBefore(), slots, plan.proven());
    }

    /** Gives a lesson a title; a blank one takes it away. */
    public static Plan rename(Plan plan, int lesson, String name) {
        List<Slot> slots = slots(plan);
        Optional<String> title = Optional.of(name.strip()).filter(text -> !text.isEmpty());
        slots.set(
                lesson,
                new Slot(slots.get(lesson).stretch(), title, slots.get(lesson).locked()));
        return Plan.of(plan.items(), plan.settings(), plan.sessionsBefore(), slots, plan.proven());
    }

    /** The cheapest plan that keeps the locked lessons; lessons that come out as they were keep their titles. */
    public static Plan planAnew(Plan plan, PlanSettings settings, OptionalInt sessions) throws CannotPlan {
        List<Stretch> locked = plan.lessons().stream()
                .filter(PlannedLesson::locked)
                .map(PlannedLesson::stretch)
                .toList();
        Plan anew = Planner.plan(new PlanRequest(plan.items(), settings, sessions, plan.sessionsBefore(), locked));
        List<Slot> before = slots(plan);
        List<Slot> named = slots(anew).stream()
                .map(slot -> before.stream()
                        .filter(other -> other.stretch().equals(slot.stretch()))
                        .findFirst()
                        .orElse(slot))
                .toList();
        return Plan.of(anew.items(), settings, anew.sessionsBefore(), named, true);
    }

    private static List<Slot> slots(Plan plan) {
        return new ArrayList<>(plan.lessons().stream()
                .map(lesson -> new Slot(lesson.stretch(), lesson.name(), lesson.locked()))
                .toList());
    }

    private static Slot slot(Plan plan, int lesson) throws CannotPlan {
        if (lesson < 0 || lesson >= plan.lessons().size()) {
            throw new CannotPlan(WORDS.say("plan-no-such-lesson", plan.sessionsBefore() + lesson + 1));
        }
        return slots(plan).get(lesson);
    }

    private static List<Slot> unlocked(Plan plan, int... lessons) throws CannotPlan {
        for (int lesson : lessons) {
            if (slot(plan, lesson).locked()) {
                throw new CannotPlan(WORDS.say("plan-lesson-locked", number(plan, lesson)));
            }
        }
        return slots(plan);
    }

    private static int number(Plan plan, int lesson) {
        return plan.lessons().get(lesson).number();
    }

    private static void setStretch(List<Slot> slots, int lesson, Stretch stretch) {
        slots.set(
                lesson,
                new Slot(stretch, slots.get(lesson).name(), slots.get(lesson).locked()));
    }

    private static Plan rebuilt(Plan plan, List<Slot> slots) {
        return Plan.of(plan.items(), plan.settings(), plan.sessionsBefore(), slots, false);
    }
}
