package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.course.planning.ByHand;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlannedLesson;
import roundwright.desktop.desk.Desk;
import roundwright.group.RoundPlace;
import roundwright.wording.Wording;

/**
 * Lessons moved by hand: where one begins, joining, dividing, locking, naming. Each is one step of undo. What cannot be done is
 * said in a notice. Lessons are places in the plan, from 0.
 */
public final class LessonsByHand {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final ChosenLesson chosen;
    private final InTurn turns;

    public LessonsByHand(Desk desk, ChosenLesson chosen) {
        this.desk = desk;
        this.chosen = chosen;
        this.turns = new InTurn(desk.work());
    }

    /** A change of a plan that may be refused. */
    private interface Change {
        Plan of(Plan plan) throws CannotPlan;
    }

    private Optional<Plan> plan() {
        return desk.course().flatMap(open -> open.plan());
    }

    /** The chosen lesson as planned. */
    public Optional<PlannedLesson> lesson() {
        OptionalInt place = chosen.planned();
        return place.isEmpty()
                ? Optional.empty()
                : plan().map(plan -> plan.lessons().get(place.getAsInt()));
    }

    public boolean hasBefore() {
        return chosen.planned().orElse(0) > 0;
    }

    public boolean hasNext() {
        return lesson().isPresent()
                && plan().filter(plan ->
                                chosen.planned().getAsInt() + 1 < plan.lessons().size())
                        .isPresent();
    }

    /** Whether a lesson can begin at the chosen round: it is not where one begins already. */
    public boolean canBeginHere() {
        return lesson().isPresent() && chosenItem() > lesson().get().stretch().from();
    }

    /** Place of the chosen round among the plan's items; -1 where there is none. */
    private int chosenItem() {
        return plan().flatMap(plan -> desk.place().map(place -> item(plan, place)))
                .orElse(-1);
    }

    private static int item(Plan plan, RoundPlace place) {
        return IntStream.range(0, plan.items().size())
                .filter(at -> is(plan.items().get(at), place))
                .findFirst()
                .orElse(-1);
    }

    private static boolean is(PlanItem item, RoundPlace place) {
        return item.part().equals(place.part()) && item.round().equals(OptionalInt.of(place.round()));
    }

    /** Moves where the chosen lesson begins by so many things to do; earlier is negative. */
    public void moveStart(int by) {
        turns.soon(() -> lesson().ifPresent(lesson -> {
            int first = lesson.stretch().from() + by;
            change(plan -> ByHand.moveStart(plan, place(), first), begins(lesson.number(), first));
        }));
    }

    private int place() {
        return chosen.planned().orElseThrow();
    }

    private String begins(int number, int first) {
        String where = plan().filter(plan -> first >= 0 && first < plan.items().size())
                .map(plan -> ItemWords.name(plan.items().get(first)))
                .orElse("");
        return WORDS.say("edit-lesson-begins", number, where);
    }

    /** Makes a lesson begin at a round: the strip's way of moving a boundary. */
    public void moveStart(int number, RoundPlace first) {
        turns.soon(() -> plan().ifPresent(plan -> placeOf(number).ifPresent(place -> {
            int item = beginning(plan, item(plan, first));
            change(now -> ByHand.moveStart(now, place, item), begins(number, item));
        })));
    }

    /** What it would come to if a lesson began at a round, in a few words; why not, where it cannot. */
    public String told(int number, RoundPlace first) {
        Optional<Plan> plan = plan();
        OptionalInt place = placeOf(number);
        if (plan.isEmpty() || place.isEmpty()) {
            return "";
        }
        int at = place.getAsInt();
        try {
            Plan moved = ByHand.moveStart(plan.get(), at, beginning(plan.get(), item(plan.get(), first)));
            return WORDS.say(
                    "boundary-told",
                    moved.lessons().get(at - 1).number(),
                    minutes(moved, at - 1),
                    moved.lessons().get(at).number(),
                    minutes(moved, at));
        } catch (CannotPlan refused) {
            return refused.getMessage();
        }
    }

    private static long minutes(Plan plan, int lesson) {
        return Math.round(plan.lessons().get(lesson).minutes().total());
    }

    /** A round at a part's beginning takes what stands before it in its part along. */
    private static int beginning(Plan plan, int item) {
        int from = item;
        while (from > 0
                && plan.items().get(from - 1).round().isEmpty()
                && plan.items()
                        .get(from - 1)
                        .part()
                        .equals(plan.items().get(item).part())
                && firstOfPart(plan, item)) {
            from--;
        }
        return from;
    }

    private static boolean firstOfPart(Plan plan, int item) {
        String part = plan.items().get(item).part();
        return plan.items().subList(0, item).stream()
                .noneMatch(other -> other.part().equals(part) && other.round().isPresent());
    }

    /** The plan's lesson that the file gives a number. */
    private OptionalInt placeOf(int number) {
        int place = desk.course()
                .flatMap(open -> open.placed())
                .map(placed -> placed.places().indexOf(number - 1))
                .orElse(-1);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** Divides the chosen lesson: a new one begins at the chosen round. */
    public void beginHere() {
        turns.soon(() -> lesson().ifPresent(lesson -> {
            int item = chosenItem();
            List<List<Integer>> sources = new ArrayList<>(same());
            sources.add(place() + 1, List.of());
            change(
                    plan -> ByHand.split(plan, place(), item),
                    sources,
                    WORDS.say("edit-lesson-divided", lesson.number()));
        }));
    }

    /** Makes one lesson of the chosen one and the next. */
    public void join() {
        turns.soon(() -> lesson().ifPresent(lesson -> {
            List<List<Integer>> sources = new ArrayList<>(same());
            sources.remove(place() + 1);
            sources.set(place(), List.of(place(), place() + 1));
            change(
                    plan -> ByHand.merge(plan, place()),
                    sources,
                    WORDS.say("edit-lessons-joined", lesson.number(), lesson.number() + 1));
        }));
    }

    /** Locks the chosen lesson, or unlocks it. */
    public void lock() {
        turns.soon(() -> lesson().ifPresent(lesson -> change(
                plan -> ByHand.lock(plan, place(), !lesson.locked()),
                lesson.locked()
                        ? WORDS.say("edit-lesson-unlocked", lesson.number())
                        : WORDS.say("edit-lesson-locked", lesson.number()))));
    }

    /** Gives the chosen lesson a title; with a blank one it is called by its rounds. */
    public void rename(String name) {
        turns.soon(() -> lesson().ifPresent(lesson -> {
            String title = name.isBlank() ? named(lesson) : name;
            change(plan -> ByHand.rename(plan, place(), title), WORDS.say("edit-lesson-renamed", lesson.number()));
        }));
    }

    private String named(PlannedLesson lesson) {
        List<PlanItem> inClass = plan().orElseThrow().inClass(lesson);
        String rounds = ItemWords.written(ItemWords.rounds(inClass));
        return rounds.isEmpty() ? ItemWords.name(inClass.get(0)) : rounds;
    }

    private List<List<Integer>> same() {
        return PlanInText.samePlaces(plan().orElseThrow().lessons().size());
    }

    private void change(Change change, String what) {
        change(change, same(), what);
    }

    private void change(Change change, List<List<Integer>> sources, String what) {
        try {
            Plan changed = change.of(plan().orElseThrow());
            TakePlan.take(desk, what, open -> PlanInText.of(open, changed, sources), () -> {});
        } catch (CannotPlan refused) {
            desk.tell(refused.getMessage());
        }
    }
}
