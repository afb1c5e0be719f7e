package roundwright.course.planning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.wording.Wording;

/**
 * A plan's lessons as a course file holds them, with all that the teacher had written in the lessons before.
 *
 * <p>Each lesson keeps the words of the lessons that it goes on from, and the title of the first of them. A title that only named
 * the old rounds is replaced by the new rounds; any other title stays.
 */
public final class LessonsOfPlan {
    private static final Wording WORDS = Wording.of("course");

    private final Plan plan;
    private final List<List<Lesson>> sources;
    private final Set<String> planned;

    private LessonsOfPlan(Plan plan, List<List<Lesson>> sources) {
        this.plan = plan;
        this.sources = sources;
        this.planned = plan.items().stream()
                .flatMap(item -> item.introduces().stream())
                .collect(Collectors.toSet());
    }

    /**
     * The lessons of a plan of the whole course. Each goes on from the lesson that had its number; what was said of lessons that
     * are no longer there goes to the last.
     */
    public static List<Lesson> of(Plan plan, List<Lesson> before) {
        int last = plan.lessons().size() - 1;
        return from(
                plan,
                IntStream.rangeClosed(0, last)
                        .mapToObj(place -> before.stream()
                                .skip(place)
                                .limit(place == last ? before.size() : 1)
                                .toList())
                        .toList());
    }

    /**
     * The lessons of a plan of the whole course.
     *
     * @param sources for each lesson of the plan, the lessons before that it goes on from; none for a new one
     */
    public static List<Lesson> from(Plan plan, List<List<Lesson>> sources) {
        LessonsOfPlan writing = new LessonsOfPlan(plan, sources);
        return IntStream.range(0, plan.lessons().size())
                .mapToObj(writing::lesson)
                .toList();
    }

    private Lesson lesson(int place) {
        PlannedLesson planned = plan.lessons().get(place);
        LessonText text = LessonText.of(plan, planned);
        List<Lesson> from = sources.get(place);
        Optional<Lesson> old = from.stream().findFirst();
        return new Lesson(
                planned.number(),
                title(planned, old).orElseGet(() -> written(planned).orElse(text.name())),
                ItemWords.rounds(plan.inClass(planned)),
                ItemWords.rounds(plan.atHome(planned)),
                introduces(planned, from),
                old.flatMap(Lesson::minutes),
                words(text, from, planned));
    }

    /** The title that the plan gives, else that of the lesson before; not one that only names the rounds it had. */
    private static Optional<String> title(PlannedLesson planned, Optional<Lesson> old) {
        Optional<String> onlyRounds = old.map(lesson -> ItemWords.written(lesson.rounds()));
        return planned.name().isPresent()
                ? planned.name().filter(name -> !onlyRounds.equals(Optional.of(name)))
                : old.flatMap(LessonsOfPlan::ownTitle);
    }

    private Optional<String> written(PlannedLesson planned) {
        String rounds = ItemWords.written(ItemWords.rounds(plan.inClass(planned)));
        return Optional.of(rounds).filter(words -> !words.isEmpty());
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

    private List<Lesson.Entry> words(LessonText text, List<Lesson> sources, PlannedLesson planned) {
        List<RoundRange> atHome = ItemWords.rounds(plan.atHome(planned));
        List<Lesson.Entry> words = new ArrayList<>();
        if (planned.locked()) {
            words.add(new Lesson.Entry(Lesson.LOCKED, WORDS.say("plan-locked")));
        }
        boolean homeworkStands = sources.size() == 1
                && !atHome.isEmpty()
                && sources.get(0).homework().equals(atHome);
        for (Lesson source : sources) {
            source.words().stream()
                    .filter(entry -> homeworkStands || !(entry.key().equals("homework") && namesRounds(source, entry)))
                    .filter(entry ->
                            !beginsWithInstruction(entry) && !entry.key().equals(Lesson.LOCKED))
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
