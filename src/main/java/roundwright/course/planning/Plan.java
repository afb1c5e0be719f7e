package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pattern split into lessons, with what the split comes to.
 *
 * @param items what there is to do, in working order
 * @param settings what the split is measured by
 * @param sessionsBefore sessions that the course had before the first lesson of this plan
 * @param lessons the sessions, in order; together they have every item once
 * @param proven no split of the kind asked for costs less; false as soon as a hand has moved anything
 */
public record Plan(
        List<PlanItem> items, PlanSettings settings, int sessionsBefore, List<PlannedLesson> lessons, boolean proven) {
    public Plan {
        items = List.copyOf(items);
        lessons = List.copyOf(lessons);
        int next = 0;
        for (PlannedLesson lesson : lessons) {
            if (lesson.stretch().from() != next) {
                throw new IllegalArgumentException("lesson " + lesson.number() + " begins at "
                        + lesson.stretch().from() + ", the one before ends before " + next);
            }
            next = lesson.stretch().last() + 1;
        }
        if (next != items.size()) {
            throw new IllegalArgumentException("the lessons end before " + next + " of " + items.size() + " items");
        }
    }

    /** The cost of the split: what all its sessions add. */
    public double cost() {
        return lessons.stream().mapToDouble(lesson -> lesson.cost().total()).sum();
    }

    /** The lesson, counted from 0, in which an item is done, in class or at home. */
    public int lessonOf(int item) {
        for (int lesson = 0; lesson < lessons.size(); lesson++) {
            if (item <= lessons.get(lesson).stretch().last()) {
                return lesson;
            }
        }
        throw new IndexOutOfBoundsException("no item " + item + " of " + items.size());
    }

    /** What a lesson does in class. */
    public List<PlanItem> inClass(PlannedLesson lesson) {
        return items.subList(lesson.stretch().from(), lesson.stretch().to() + 1);
    }

    /** What a lesson gives as homework; empty for none. */
    public List<PlanItem> atHome(PlannedLesson lesson) {
        return items.subList(lesson.stretch().to() + 1, lesson.stretch().last() + 1);
    }

    static Plan of(PlanRequest request, List<Stretch> sessions) {
        List<Slot> slots = sessions.stream()
                .map(stretch ->
                        new Slot(stretch, Optional.empty(), request.locked().contains(stretch)))
                .toList();
        return of(request.items(), request.settings(), request.sessionsBefore(), slots, true);
    }

    /** A session before its minutes and cost are worked out. */
    record Slot(Stretch stretch, Optional<String> name, boolean locked) {}

    static Plan of(List<PlanItem> items, PlanSettings settings, int sessionsBefore, List<Slot> slots, boolean proven) {
        Prices prices = new Prices(items, settings);
        List<PlannedLesson> lessons = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            boolean first = sessionsBefore + i == 0;
            SessionMinutes minutes = prices.minutes(slot.stretch(), first);
            lessons.add(new PlannedLesson(
                    sessionsBefore + i + 1,
                    slot.name(),
                    slot.locked(),
                    slot.stretch(),
                    minutes,
                    Math.max(0, minutes.total() - settings.minutes()),
                    introduced(items, slot.stretch()),
                    prices.cost(slot.stretch(), first, i == slots.size() - 1)));
        }
        return new Plan(items, settings, sessionsBefore, lessons, proven);
    }

    private static List<String> introduced(List<PlanItem> items, Stretch stretch) {
        return items.subList(stretch.from(), stretch.to() + 1).stream()
                .flatMap(item -> item.introduces().stream())
                .toList();
    }
}
