package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.LessonsOfPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.Planner;
import roundwright.course.planning.WrittenLessons;
import roundwright.course.preparation.PrepLine;
import roundwright.course.preparation.Preparation;
import roundwright.notation.Terms;
import roundwright.pattern.Round;
import roundwright.pattern.WorkedAs;
import roundwright.pattern.chart.ChartSetting;
import roundwright.technique.FirstUses;
import roundwright.technique.FirstUses.Place;
import roundwright.technique.Technique;

/**
 * A course laid out by its lessons: what is done in each, in class and at home, what is new in it, and where its minutes go. A course without
 * lessons is laid out as the planner would split it.
 */
public final class CourseWork {
    private final Course course;
    private final FirstUses uses;
    private final List<Lesson> lessons;
    private final Optional<Plan> plan;
    private final Optional<Preparation> preparation;
    private final Map<Lesson, List<Place>> inClass = new LinkedHashMap<>();
    private final Map<Lesson, List<Place>> atHome = new LinkedHashMap<>();

    private CourseWork(Course course, List<Lesson> lessons, Optional<Plan> plan) {
        this.course = course;
        this.lessons = List.copyOf(lessons);
        this.plan = plan;
        this.preparation = plan.map(one -> Preparation.of(course, one));
        this.uses = course.uses();
        share();
    }

    public static CourseWork of(Course course) {
        CourseSettings settings = course.settings();
        double pace = settings.pace().orElse(PlanItems.USUAL_PACE);
        List<PlanItem> items = PlanItems.of(course.uses(), pace).items();
        PlanSettings measure = new PlanSettings(settings.sessionMinutes(), pace, PlanSettings.USUAL_MOST_NEW, 0);
        if (!course.lessons().isEmpty()) {
            return new CourseWork(course, course.lessons(), WrittenLessons.plan(items, measure, course.lessons()));
        }
        Optional<Plan> plan = planned(items, measure);
        return new CourseWork(
                course, plan.map(one -> LessonsOfPlan.of(one, List.of())).orElse(List.of()), plan);
    }

    private static Optional<Plan> planned(List<PlanItem> items, PlanSettings measure) {
        try {
            return items.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Planner.plan(PlanRequest.of(items, measure, OptionalInt.empty())));
        } catch (CannotPlan nothingToDo) {
            return Optional.empty();
        }
    }

    /** An instruction goes with the round that follows it in its part, or at the part's end with the round before. */
    private void share() {
        lessons.forEach(lesson -> {
            inClass.put(lesson, new ArrayList<>());
            atHome.put(lesson, new ArrayList<>());
        });
        if (lessons.isEmpty()) {
            return;
        }
        List<Place> waiting = new ArrayList<>();
        List<Place> shelf = inClass.get(lessons.get(0));
        for (Place place : uses.places()) {
            boolean partBegins = place.index() == 0;
            if (partBegins) {
                shelf.addAll(waiting);
                waiting.clear();
            }
            waiting.add(place);
            if (place.round().isPresent()) {
                shelf = shelf(place, shelf);
                shelf.addAll(waiting);
                waiting.clear();
            }
        }
        shelf.addAll(waiting);
    }

    private List<Place> shelf(Place place, List<Place> before) {
        int number = place.round().orElseThrow();
        for (Lesson lesson : lessons) {
            if (has(lesson.rounds(), place.part(), number)) {
                return inClass.get(lesson);
            }
            if (has(lesson.homework(), place.part(), number)) {
                return atHome.get(lesson);
            }
        }
        return before;
    }

    private static boolean has(List<RoundRange> ranges, String part, int number) {
        return ranges.stream().anyMatch(range -> range.contains(part, number));
    }

    public Course course() {
        return course;
    }

    public Terms terms() {
        return course.pattern().terms();
    }

    public List<Lesson> lessons() {
        return lessons;
    }

    public FirstUses uses() {
        return uses;
    }

    /** Whether the teacher has not split the course, so that the lessons are the planner's. */
    public boolean proposed() {
        return course.lessons().isEmpty();
    }

    /** What is done in class, in working order. */
    public List<WorkItem> inClass(Lesson lesson) {
        return items(inClass.get(lesson));
    }

    /** What is done at home after a lesson. */
    public List<WorkItem> atHome(Lesson lesson) {
        return items(atHome.get(lesson));
    }

    /** How the chart of a round of the course is laid out for a hand. */
    public ChartSetting chartOf(String part, int round, boolean leftHanded) {
        WorkedAs worked = course.pattern().part(part).map(WorkedAs::of).orElse(WorkedAs.ROUNDS);
        return ChartSetting.of(worked, round, leftHanded);
    }

    private static List<WorkItem> items(List<Place> places) {
        List<WorkItem> items = new ArrayList<>();
        Map<Object, Integer> seen = new HashMap<>();
        for (Place place : places) {
            Optional<Integer> again = Optional.empty();
            if (place.item() instanceof Round round) {
                again = Optional.ofNullable(seen.putIfAbsent(round.line(), round.number()));
            }
            items.add(new WorkItem(place.part(), place.item(), again));
        }
        return items;
    }

    /** What is new in a lesson and counts as new, in teaching order: what comes first in it, and what the teacher says. */
    public List<Technique> fresh(Lesson lesson) {
        return taught(lesson).stream()
                .filter(technique -> !technique.groundwork())
                .toList();
    }

    /** What is shown in passing. */
    public List<Technique> groundwork(Lesson lesson) {
        return taught(lesson).stream().filter(Technique::groundwork).toList();
    }

    private List<Technique> taught(Lesson lesson) {
        Set<String> ids = new LinkedHashSet<>(lesson.introduces());
        for (Place place : inClass.get(lesson)) {
            uses.at(place.order()).forEach(use -> ids.add(use.technique().id()));
        }
        return course.techniques().all().stream()
                .filter(technique -> ids.contains(technique.id()))
                .toList();
    }

    /** What is taught just before an item of the plan; what an instruction without minutes brings is taught with the item after it. */
    List<Technique> taughtAt(PlanItem item) {
        List<Technique> taught = new ArrayList<>();
        List<Place> before = new ArrayList<>();
        for (Place place : uses.places()) {
            before.add(place);
            if (is(place, item)) {
                before.forEach(one -> uses.at(one.order()).forEach(use -> taught.add(use.technique())));
                return taught;
            }
            if (place.round().isPresent() || plannedInstruction(place)) {
                before.clear();
            }
        }
        return taught;
    }

    private boolean plannedInstruction(Place place) {
        return plan.stream().flatMap(one -> one.items().stream()).anyMatch(item -> is(place, item));
    }

    private static boolean is(Place place, PlanItem item) {
        boolean samePart = item.part().equals(place.part());
        boolean sameRound = place.round().isPresent()
                && item.round().isPresent()
                && place.round().get() == item.round().getAsInt();
        boolean sameWords = item.instruction().isPresent()
                && item.instruction().get().equals(place.item().line().text().strip());
        return samePart && (sameRound || sameWords);
    }

    /** Length of a lesson in minutes. */
    public int minutes(Lesson lesson) {
        return lesson.minutes().orElse(course.settings().sessionMinutes());
    }

    /** The lessons as a plan; empty where no lesson names a round of the pattern. */
    public Optional<Plan> plan() {
        return plan;
    }

    /** A lesson as the plan has it. */
    public Optional<PlannedLesson> planned(Lesson lesson) {
        Optional<WorkItem> first = inClass(lesson).stream()
                .filter(item -> item.round().isPresent())
                .findFirst();
        return first.flatMap(item -> plan.flatMap(one -> one.lessons().stream()
                .filter(planned -> one.inClass(planned).stream().anyMatch(other -> same(other, item)))
                .findFirst()));
    }

    private static boolean same(PlanItem planned, WorkItem item) {
        return planned.part().equals(item.part())
                && planned.round().isPresent()
                && planned.round().getAsInt() == item.round().orElseThrow().number();
    }

    /** What the teacher gets ready for a lesson; empty where no lesson of the plan is it. */
    public Optional<List<PrepLine>> prepared(Lesson lesson) {
        return preparation.flatMap(one -> planned(lesson).map(one::lesson));
    }

    /** What everybody needs for the whole course. */
    public List<PrepLine> prepared() {
        return preparation.map(Preparation::wholeCourse).orElse(List.of());
    }
}
