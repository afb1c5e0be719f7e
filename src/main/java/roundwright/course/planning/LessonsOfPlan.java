package roundwright.course.planning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.wording.Wording;

/**
 * A plan's lessons as a course file holds them, with all that the teacher had written in the lessons before.
 *
 * <p>Each lesson keeps the words of the lesson that had its number; what was said of lessons that are no longer there goes to the
 * last. A title that only named the old rounds is replaced by the new rounds; any other title stays.
 */
public final class LessonsOfPlan {
    private static final Wording WORDS = Wording.of("course");

    private final Plan plan;
    private final List<Lesson> before;
    private final Set<String> planned;

    private LessonsOfPlan(Plan plan, List<Lesson> before) {
        this.plan = plan;
        this.before = before;
        this.planned = plan.items().stream()
                .flatMap(item -> item.introduces().stream())
                .collect(Collectors.toSet());
    }

    /** The lessons of a plan of the whole course. */
    public static List<Lesson> of(Plan plan, List<Lesson> before) {
        LessonsOfPlan writing = new LessonsOfPlan(plan, before);
        return plan.lessons().stream().map(writing::lesson).toList();
    }

    private Lesson lesson(PlannedLesson planned) {
        LessonText text = LessonText.of(plan, planned);
        Optional<Lesson> old = before.stream().skip(planned.number() - 1L).findFirst();
        List<Lesson> sources = planned.number() == plan.lessons().size()
                ? before.stream().skip(planned.number() - 1L).toList()
                : old.stream().toList();
        return new Lesson(
                planned.number(),
                planned.name().or(() -> old.flatMap(LessonsOfPlan::ownTitle)).orElse(text.name()),
                ItemWords.rounds(plan.inClass(planned)),
                ItemWords.rounds(plan.atHome(planned)),
                introduces(planned, sources),
                old.flatMap(Lesson::minutes),
                words(text, sources, ItemWords.rounds(plan.atHome(planned))));
    }

    private static Optional<String> ownTitle(Lesson lesson) {
        boolean onlyRounds = lesson.name().equals(ItemWords.written(lesson.rounds()));
        return lesson.name().isBlank() || onlyRounds ? Optional.empty() : Optional.of(lesson.name());
    }

    /** What the plan finds new, and what the teacher teaches beside the pattern. */
    private List<String> introduces(PlannedLesson lesson, List<Lesson> sources) {
        Stream<String> beside =
                sources.stream().flatMap(source -> source.introduces().stream()).filter(id -> !planned.contains(id));
        return List.copyOf(Stream.concat(lesson.introduces().stream(), beside)
                .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private static List<Lesson.Entry> words(LessonText text, List<Lesson> sources, List<RoundRange> atHome) {
        List<Lesson.Entry> words = new ArrayList<>();
        boolean homeworkStands = sources.size() == 1
                && !atHome.isEmpty()
                && sources.get(0).homework().equals(atHome);
        for (Lesson source : sources) {
            source.words().stream()
                    .filter(entry -> homeworkStands || !(entry.key().equals("homework") && namesRounds(source, entry)))
                    .filter(entry -> !beginsWithInstruction(entry))
                    .forEach(words::add);
        }
        if (!homeworkStands) {
            text.homework().ifPresent(value -> words.add(new Lesson.Entry("homework", value)));
        }
        text.note().ifPresent(value -> words.add(new Lesson.Entry("note", value)));
        return words;
    }

    private static boolean namesRounds(Lesson lesson, Lesson.Entry entry) {
        String value = entry.value().toLowerCase(Locale.ROOT);
        return lesson.homework().stream()
                .anyMatch(range -> value.contains(range.part().toLowerCase(Locale.ROOT)));
    }

    private static boolean beginsWithInstruction(Lesson.Entry entry) {
        return entry.key().equals("note") && entry.value().startsWith(WORDS.say("plan-note-begin", ""));
    }
}
