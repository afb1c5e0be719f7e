package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.planning.Plan.Slot;

/**
 * The lessons that a teacher wrote, seen as a plan of the pattern.
 *
 * <p>A lesson begins at the first of its rounds; rounds that no lesson names go with the lesson before. Instructions go with the
 * round before them, unless that was homework, or the next lesson says them in its own words, teaches what they need,
 * or has no rounds at all.
 */
public final class WrittenLessons {
    private final List<PlanItem> items;
    private final List<Slot> slots = new ArrayList<>();

    private WrittenLessons(List<PlanItem> items) {
        this.items = items;
    }

    /**
     * A plan and the lessons that it was read from.
     *
     * @param places for each lesson of the plan, its place among the lessons as written, from 0
     */
    public record Placed(Plan plan, List<Integer> places) {
        public Placed {
            places = List.copyOf(places);
        }
    }

    /** The plan; empty where no lesson names a round of the pattern. A lesson that goes back before the one above it is left out. */
    public static Optional<Plan> plan(List<PlanItem> items, PlanSettings settings, List<Lesson> lessons) {
        return placed(items, settings, lessons).map(Placed::plan);
    }

    /** The plan as {@link #plan} gives it, with the lessons that are in it. */
    public static Optional<Placed> placed(List<PlanItem> items, PlanSettings settings, List<Lesson> lessons) {
        WrittenLessons written = new WrittenLessons(items);
        List<Integer> starts = new ArrayList<>();
        List<Lesson> placed = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < lessons.size(); i++) {
            Lesson lesson = lessons.get(i);
            OptionalInt start = placed.isEmpty()
                    ? written.first(lesson)
                    : written.startAfter(placed.get(placed.size() - 1), starts.get(starts.size() - 1), lesson);
            if (start.isPresent()) {
                starts.add(start.getAsInt());
                placed.add(lesson);
                places.add(i);
            }
        }
        written.addSlots(placed, starts);
        return placed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Placed(Plan.of(items, settings, 0, written.slots, false), places));
    }

    /** What comes before the first lesson's rounds is done in it. */
    private OptionalInt first(Lesson lesson) {
        return places(lesson.rounds()).findAny().isPresent() ? OptionalInt.of(0) : OptionalInt.empty();
    }

    private OptionalInt startAfter(Lesson before, int from, Lesson lesson) {
        int after = lastRound(before, from);
        if (lesson.rounds().isEmpty()) {
            return instructionAfter(after, lesson);
        }
        OptionalInt round =
                places(lesson.rounds()).filter(place -> place > after).findFirst();
        return round.isEmpty() ? round : OptionalInt.of(withInstructions(before, lesson, round.getAsInt(), after));
    }

    private OptionalInt instructionAfter(int after, Lesson lesson) {
        List<Integer> instructions = IntStream.range(after + 1, items.size())
                .takeWhile(place -> items.get(place).round().isEmpty())
                .boxed()
                .toList();
        return instructions.stream()
                .filter(place -> says(lesson, items.get(place)))
                .findFirst()
                .or(() -> instructions.stream().findFirst())
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    private int withInstructions(Lesson before, Lesson lesson, int round, int after) {
        int start = round;
        while (start - 1 > after && begins(before, lesson, start - 1)) {
            start--;
        }
        return start;
    }

    /** Homework has only the instructions that it says; what follows it is done in the next class. */
    private boolean begins(Lesson before, Lesson lesson, int place) {
        boolean afterHomework = !before.homework().isEmpty() && !isHome(before, place);
        return items.get(place).round().isEmpty() && (afterHomework || says(lesson, items.get(place)));
    }

    private static boolean says(Lesson lesson, PlanItem item) {
        boolean teaches = item.introduces().stream().anyMatch(lesson.introduces()::contains);
        return item.instruction()
                .filter(text -> teaches
                        || lesson.words().stream()
                                .anyMatch(entry -> entry.value().contains(text)))
                .isPresent();
    }

    private int lastRound(Lesson lesson, int start) {
        return IntStream.concat(places(lesson.rounds()), places(lesson.homework()))
                .filter(place -> place >= start)
                .max()
                .orElse(start);
    }

    private IntStream places(List<RoundRange> ranges) {
        return IntStream.range(0, items.size()).filter(place -> isIn(ranges, items.get(place)));
    }

    private static boolean isIn(List<RoundRange> ranges, PlanItem item) {
        return item.round().isPresent()
                && ranges.stream()
                        .anyMatch(range ->
                                range.contains(item.part(), item.round().getAsInt()));
    }

    private void addSlots(List<Lesson> lessons, List<Integer> starts) {
        for (int i = 0; i < lessons.size(); i++) {
            int from = starts.get(i);
            int last = (i + 1 < starts.size() ? starts.get(i + 1) : items.size()) - 1;
            Lesson lesson = lessons.get(i);
            int to = Math.max(from, lastInClass(lesson, from, last));
            Optional<String> name = Optional.of(lesson.name()).filter(text -> !text.isBlank());
            slots.add(new Slot(new Stretch(from, to, last), name, lesson.locked()));
        }
    }

    /** The item before the homework that ends a lesson's stretch; the last where it ends in class. */
    private int lastInClass(Lesson lesson, int from, int last) {
        List<Integer> home = IntStream.rangeClosed(from, last)
                .filter(place -> isHome(lesson, place))
                .boxed()
                .toList();
        if (home.isEmpty()) {
            return last;
        }
        int first = home.get(0);
        boolean goesOn = IntStream.rangeClosed(first, last)
                .allMatch(place ->
                        home.contains(place) || items.get(place).round().isEmpty());
        return goesOn ? first - 1 : last;
    }

    private boolean isHome(Lesson lesson, int place) {
        return isIn(lesson.homework(), items.get(place))
                || items.get(place)
                        .instruction()
                        .filter(text -> lesson.words("homework").stream().anyMatch(words -> words.contains(text)))
                        .isPresent();
    }
}
