package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.ByHand;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.Planner;
import roundwright.course.planning.WrittenLessons;
import roundwright.desktop.desk.OpenCourse;
import roundwright.wording.Wording;

/**
 * A course split anew beside the lessons as they are. Working it out takes longer than a blink, so not on the event thread.
 *
 * @param now the lessons as they are, by the same measure; empty where there are none
 * @param plan the split asked for
 * @param others the best split with one lesson fewer and with one more, where there are such
 */
record SplitAnew(OpenCourse open, SplitWish wish, Optional<Plan> now, Plan plan, List<Plan> others) {
    private static final Wording WORDS = Wording.of("desktop");

    SplitAnew {
        others = List.copyOf(others);
    }

    /**
     * A lesson in both splits.
     *
     * @param anew what it would be
     * @param before what it is now, where that is another
     */
    record Row(String anew, Optional<String> before) {}

    static SplitAnew of(OpenCourse open, SplitWish wish) throws CannotPlan {
        List<PlanItem> items = PlanItems.of(open.uses(), wish.settings().pace()).items();
        Optional<Plan> now =
                WrittenLessons.plan(items, wish.settings(), open.course().lessons());
        Plan plan = split(items, now, wish, wish.lessons());
        int lessons = plan.lessons().size();
        List<Plan> others = Stream.of(lessons - 1, lessons + 1)
                .filter(number -> number >= 1 && number <= items.size())
                .flatMap(number -> maybe(items, now, wish, number).stream())
                .toList();
        return new SplitAnew(open, wish, now, plan, others);
    }

    private static Plan split(List<PlanItem> items, Optional<Plan> now, SplitWish wish, OptionalInt lessons)
            throws CannotPlan {
        return now.isPresent()
                ? ByHand.planAnew(now.get(), wish.settings(), lessons)
                : Planner.plan(PlanRequest.of(items, wish.settings(), lessons));
    }

    private static Optional<Plan> maybe(List<PlanItem> items, Optional<Plan> now, SplitWish wish, int lessons) {
        try {
            return Optional.of(split(items, now, wish, OptionalInt.of(lessons)));
        } catch (CannotPlan impossible) {
            return Optional.empty();
        }
    }

    /** The split, the lessons as they are, and what it would be with one lesson fewer and one more: a sentence each. */
    List<String> summary() {
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("split-anew", SplitMeasure.of(plan).words()));
        now.ifPresent(before ->
                said.add(WORDS.say("split-now", SplitMeasure.of(before).words())));
        others.forEach(other ->
                said.add(WORDS.say("split-other", SplitMeasure.of(other).words())));
        return said;
    }

    /** Whether it is what the lessons are already. */
    boolean same() {
        return now.filter(before -> stretches(before).equals(stretches(plan))).isPresent();
    }

    private static List<?> stretches(Plan plan) {
        return plan.lessons().stream().map(PlannedLesson::stretch).toList();
    }

    /** Lesson by lesson, up to the last of either. */
    List<Row> rows() {
        int last = Math.max(
                plan.lessons().size(),
                now.map(before -> before.lessons().size()).orElse(0));
        return IntStream.range(0, last)
                .mapToObj(place -> row(place + 1, words(plan, place), now.flatMap(before -> words(before, place))))
                .toList();
    }

    private static Row row(int number, Optional<String> anew, Optional<String> before) {
        boolean same = anew.equals(before);
        return new Row(
                WORDS.say("split-numbered", number, anew.orElse(WORDS.say("split-no-lesson"))),
                same ? Optional.empty() : before.map(text -> WORDS.say("split-before", text)));
    }

    private static Optional<String> words(Plan plan, int place) {
        if (place >= plan.lessons().size()) {
            return Optional.empty();
        }
        PlannedLesson lesson = plan.lessons().get(place);
        return Optional.of(WORDS.say(
                "split-lesson",
                ItemWords.lesson(plan, lesson),
                Math.round(lesson.minutes().total()),
                lesson.introduces().size()));
    }

    /** The course's text with the split's lessons, and with the length of a session and the pace that it was split by. */
    String text() {
        CourseFile file = open.file();
        long minutes = Math.round(wish.settings().minutes());
        if (minutes != open.course().settings().sessionMinutes()) {
            file = set(file, "session", WORDS.say("split-written-minutes", minutes));
        }
        double stated = open.course().settings().pace().orElse(PlanItems.USUAL_PACE);
        if (wish.settings().pace() != stated) {
            String pace = Numbers.shortest(wish.settings().pace());
            file = set(file, "pace", WORDS.say("split-written-pace", pace));
        }
        List<List<Integer>> sources =
                now.map(before -> PlanInText.mostInCommon(before, plan)).orElse(List.of());
        return PlanInText.of(open.with(file), plan, sources);
    }

    private static CourseFile set(CourseFile file, String key, String value) {
        return CourseFile.read(CourseEdits.of(file).setting(key, Optional.of(value)));
    }
}
