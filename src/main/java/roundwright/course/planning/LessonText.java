package roundwright.course.planning;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import roundwright.course.RoundRange;
import roundwright.wording.Wording;

/**
 * What a planned lesson says of itself in a course file, so that {@link WrittenLessons} finds the same lesson in it.
 *
 * @param name its title; where the plan has none, what is worked in it
 * @param rounds as the item {@code rounds} says them; empty for a lesson of instructions alone
 * @param homework as the item {@code homework} says it
 * @param note instructions that the lesson begins with, or has alone, in their own words
 */
public record LessonText(String name, Optional<String> rounds, Optional<String> homework, Optional<String> note) {
    private static final Wording WORDS = Wording.of("course");

    public static LessonText of(Plan plan, PlannedLesson lesson) {
        List<PlanItem> inClass = plan.inClass(lesson);
        List<RoundRange> rounds = ItemWords.rounds(inClass);
        Optional<String> written = Optional.of(ItemWords.written(rounds)).filter(text -> !text.isEmpty());
        return new LessonText(
                lesson.name().orElse(written.orElseGet(() -> ItemWords.withoutStop(ItemWords.name(inClass.get(0))))),
                written,
                homework(plan.atHome(lesson)),
                firstInstructions(inClass).map(text -> WORDS.say("plan-note-begin", text)));
    }

    /** Instructions that stand before the first round; the course file names rounds alone. */
    private static Optional<String> firstInstructions(List<PlanItem> items) {
        String text = items.stream()
                .takeWhile(item -> item.round().isEmpty())
                .map(ItemWords::name)
                .collect(Collectors.joining(" "));
        return Optional.of(text).filter(words -> !words.isEmpty());
    }

    private static Optional<String> homework(List<PlanItem> items) {
        String rounds = ItemWords.written(ItemWords.rounds(items));
        String instructions = items.stream()
                .filter(item -> item.round().isEmpty())
                .map(ItemWords::name)
                .collect(Collectors.joining(" "));
        String text = rounds.isEmpty() || instructions.isEmpty()
                ? rounds + instructions
                : WORDS.say("plan-homework-and", rounds, instructions);
        return Optional.of(text).filter(words -> !words.isEmpty());
    }
}
