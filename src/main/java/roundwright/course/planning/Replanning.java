package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.planning.Plan.Slot;
import roundwright.wording.Wording;

/**
 * The plan of a running group made anew: what is done stays, the rest is split by the group's own pace.
 *
 * @param done items that count as done; the rest's items begin after them
 * @param rest the plan of what is left; its lessons are numbered on from the sessions held
 * @param changes lesson by lesson, of all lessons from the next on, in the old plan or in the new
 * @param behind students whom the plan leaves behind, those with most to catch up first
 */
public record Replanning(int done, Plan rest, List<LessonChange> changes, List<LeftBehind> behind) {
    private static final Wording WORDS = Wording.of("course");

    /** Less a lesson is made up between chatting and packing up. */
    private static final double WORTH_SAYING = 1;

    public Replanning {
        changes = List.copyOf(changes);
        behind = List.copyOf(behind);
    }

    /**
     * Plans the rest anew.
     *
     * @param current the plan that the group has followed so far, from the course's beginning
     * @param sessions how many sessions are left; empty to take the number that is cheapest
     */
    public static Replanning of(Plan current, GroupNow now, OptionalInt sessions) throws CannotPlan {
        int size = current.items().size();
        if (now.done() >= size) {
            throw new CannotPlan(WORDS.say("plan-all-done"));
        }
        PlanSettings before = current.settings();
        List<PlanItem> left = current.items().subList(now.done(), size).stream()
                .map(item -> item.atPace(before.pace(), now.pace()))
                .toList();
        PlanSettings settings =
                new PlanSettings(before.minutes(), now.pace(), before.mostNew(), before.homeworkMinutes());
        Plan rest = withTitles(
                current,
                now.done(),
                Planner.plan(
                        new PlanRequest(left, settings, sessions, now.sessionsHeld(), locked(current, now.done()))));
        return new Replanning(now.done(), rest, changes(current, now.sessionsHeld(), rest), behind(current, now, rest));
    }

    /**
     * The plan of the whole course: the lessons held, with what was done in them, and after them the rest. Where less was done
     * than there were lessons, lessons that did nothing are left out.
     *
     * @param current the plan that the rest was planned anew from
     */
    public Plan whole(Plan current) {
        List<Slot> slots = new ArrayList<>();
        int lessons = Math.min(rest.sessionsBefore(), done);
        for (int i = 0; i < lessons; i++) {
            int from = slots.isEmpty() ? 0 : slots.get(i - 1).stretch().last() + 1;
            slots.add(held(current, i, from, done - lessons + i));
        }
        boolean early = lessons == 0 && done > 0;
        for (PlannedLesson lesson : rest.lessons()) {
            Stretch left = lesson.stretch();
            int from = early && slots.isEmpty() ? 0 : left.from() + done;
            Stretch stretch = new Stretch(from, left.to() + done, left.last() + done);
            slots.add(new Slot(stretch, lesson.name(), lesson.locked()));
        }
        return Plan.of(current.items(), current.settings(), 0, slots, false);
    }

    /** A lesson held, up to where it was planned to go; the last one to where the group is. */
    private Slot held(Plan current, int place, int from, int latest) {
        Optional<PlannedLesson> before = current.lessons().stream().skip(place).findFirst();
        boolean lastHeld = latest == done - 1;
        int planned = before.map(lesson -> lesson.stretch().last()).orElse(latest);
        int last = lastHeld ? latest : Math.max(from, Math.min(planned, latest));
        int to = before.map(lesson -> lesson.stretch().to())
                .filter(end -> end >= from && end <= last)
                .orElse(last);
        return new Slot(
                new Stretch(from, last == planned ? to : last, last),
                before.flatMap(PlannedLesson::name),
                before.filter(PlannedLesson::locked).isPresent());
    }

    /** Lessons that come out as they were keep their titles. */
    private static Plan withTitles(Plan current, int done, Plan rest) {
        List<Slot> slots = rest.lessons().stream()
                .map(lesson -> new Slot(lesson.stretch(), title(current, done, lesson.stretch()), lesson.locked()))
                .toList();
        return Plan.of(rest.items(), rest.settings(), rest.sessionsBefore(), slots, rest.proven());
    }

    private static Optional<String> title(Plan current, int done, Stretch stretch) {
        Stretch before = new Stretch(stretch.from() + done, stretch.to() + done, stretch.last() + done);
        return current.lessons().stream()
                .filter(lesson -> lesson.stretch().equals(before))
                .findFirst()
                .flatMap(PlannedLesson::name);
    }

    /** Locked lessons that have not begun, as places in what is left. */
    private static List<Stretch> locked(Plan current, int done) {
        return current.lessons().stream()
                .filter(PlannedLesson::locked)
                .map(PlannedLesson::stretch)
                .filter(stretch -> stretch.from() >= done)
                .map(stretch -> new Stretch(stretch.from() - done, stretch.to() - done, stretch.last() - done))
                .toList();
    }

    private static List<LessonChange> changes(Plan current, int held, Plan rest) {
        int last = Math.max(lastNumber(current), lastNumber(rest));
        List<LessonChange> changes = new ArrayList<>();
        for (int number = held + 1; number <= last; number++) {
            changes.add(new LessonChange(number, words(current, number), words(rest, number)));
        }
        return changes;
    }

    private static int lastNumber(Plan plan) {
        return plan.sessionsBefore() + plan.lessons().size();
    }

    private static Optional<String> words(Plan plan, int number) {
        return plan.lessons().stream()
                .filter(lesson -> lesson.number() == number)
                .map(lesson -> ItemWords.lesson(plan, lesson))
                .findFirst();
    }

    private static List<LeftBehind> behind(Plan current, GroupNow now, Plan rest) {
        return now.learners().stream()
                .map(learner -> behind(current, now, rest, learner))
                .filter(one -> one.items() > 0 || one.extraMinutes() >= WORTH_SAYING)
                .sorted((one, other) -> Double.compare(
                        other.catchUpMinutes() + other.extraMinutes(), one.catchUpMinutes() + one.extraMinutes()))
                .toList();
    }

    private static LeftBehind behind(Plan current, GroupNow now, Plan rest, Learner learner) {
        int from = Math.min(learner.done(), now.done());
        double catchUp = current.items().subList(from, now.done()).stream()
                .map(item -> item.atPace(current.settings().pace(), learner.pace()))
                .mapToDouble(item -> item.working() + item.counting())
                .sum();
        int stitches = rest.items().stream().mapToInt(PlanItem::stitches).sum();
        double slower = stitches / learner.pace() - stitches / now.pace();
        double extra = Math.max(0, slower) / rest.lessons().size();
        return new LeftBehind(learner.name(), now.done() - from, catchUp, extra);
    }
}
