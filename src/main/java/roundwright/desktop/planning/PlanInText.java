package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.course.Lesson;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;
import roundwright.course.file.Section;
import roundwright.course.planning.LessonsOfPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.WrittenLessons;
import roundwright.desktop.desk.OpenCourse;

/** Writes a plan into a course's text: lessons that the plan leaves as they were keep every letter. */
final class PlanInText {
    private final OpenCourse open;
    private final Plan plan;
    private final List<List<Integer>> sources;

    /**
     * @param sources for each lesson of the plan, the lessons of the plan before that it goes on from, as places from 0
     */
    private PlanInText(OpenCourse open, Plan plan, List<List<Integer>> sources) {
        this.open = open;
        this.plan = plan;
        this.sources = sources;
    }

    /** The course's text with the plan's lessons. Reads the pattern several times, so not on the event thread. */
    static String of(OpenCourse open, Plan plan, List<List<Integer>> sources) {
        if (open.placed().isEmpty()) {
            List<Lesson> lessons = LessonsOfPlan.of(plan, open.course().lessons());
            return CourseEdits.of(open.file()).lessons(lessons).text();
        }
        PlanInText writing = new PlanInText(open, plan, sources);
        CourseFile file = writing.withSectionsInPlace(writing.open.file());
        return CourseEdits.of(file).lessons(writing.lessons()).text();
    }

    /** Each lesson goes on from the one that had its place. */
    static List<List<Integer>> samePlaces(int lessons) {
        return IntStream.range(0, lessons).mapToObj(List::of).toList();
    }

    /** Each lesson before is gone on from where most of its items are now; of two such places, in the earlier. */
    static List<List<Integer>> mostInCommon(Plan before, Plan plan) {
        List<List<Integer>> sources = new ArrayList<>();
        plan.lessons().forEach(lesson -> sources.add(new ArrayList<>()));
        for (int i = 0; i < before.lessons().size(); i++) {
            PlannedLesson old = before.lessons().get(i);
            int best = 0;
            for (int j = 1; j < plan.lessons().size(); j++) {
                best = common(old, plan.lessons().get(j))
                                > common(old, plan.lessons().get(best))
                        ? j
                        : best;
            }
            sources.get(best).add(i);
        }
        return sources;
    }

    private static int common(PlannedLesson one, PlannedLesson other) {
        int from = Math.max(one.stretch().from(), other.stretch().from());
        return Math.min(one.stretch().last(), other.stretch().last()) - from + 1;
    }

    private List<Lesson> lessons() {
        List<Lesson> anew =
                LessonsOfPlan.from(plan, sources.stream().map(this::written).toList());
        return IntStream.range(0, anew.size())
                .mapToObj(place -> untouched(place).orElse(anew.get(place)).numbered(place + 1))
                .toList();
    }

    /** The lessons as written that the plan's lessons were read from; one that the plan leaves out goes with the one before it. */
    private List<Lesson> written(List<Integer> planned) {
        List<Integer> places = open.placed().map(WrittenLessons.Placed::places).orElse(List.of());
        List<Lesson> all = open.course().lessons();
        List<Lesson> found = new ArrayList<>();
        for (int place : planned) {
            int from = places.get(place);
            int to = place + 1 < places.size() ? places.get(place + 1) : all.size();
            found.addAll(all.subList(from, to));
            if (place == 0) {
                found.addAll(all.subList(0, from));
            }
        }
        return IntStream.range(0, found.size())
                .mapToObj(place -> place == 0 ? found.get(place) : withParagraphs(found.get(place)))
                .toList();
    }

    /** A lesson whose section goes says as notes what stood in its paragraphs. */
    private Lesson withParagraphs(Lesson lesson) {
        List<Lesson.Entry> words = new ArrayList<>(lesson.words());
        open.file().section(lesson).map(Section::paragraphs).orElse(List.of()).stream()
                .map(paragraph -> new Lesson.Entry("note", paragraph))
                .forEach(words::add);
        return new Lesson(
                lesson.number(),
                lesson.name(),
                lesson.rounds(),
                lesson.homework(),
                lesson.introduces(),
                lesson.minutes(),
                words);
    }

    private Optional<Lesson> untouched(int place) {
        PlannedLesson now = plan.lessons().get(place);
        List<Lesson> from = written(sources.get(place));
        boolean same = from.size() == 1
                && open.plan()
                        .map(before -> before.lessons().get(sources.get(place).get(0)))
                        .filter(old -> old.stretch().equals(now.stretch())
                                && old.locked() == now.locked()
                                && old.name().equals(now.name()))
                        .isPresent();
        return same ? Optional.of(from.get(0)) : Optional.empty();
    }

    /** Takes away the sections of lessons that are no more, and makes one for each new lesson at its place. */
    private CourseFile withSectionsInPlace(CourseFile file) {
        List<Lesson> all = open.course().lessons();
        List<Integer> kept = sources.stream()
                .map(this::written)
                .map(from -> from.isEmpty() ? -1 : all.indexOf(from.get(0)))
                .toList();
        CourseFile now = file;
        for (int number = all.size(); number >= 1; number--) {
            if (!kept.contains(number - 1)) {
                now = CourseFile.read(CourseEdits.of(now).removeLesson(number));
            }
        }
        List<Lesson> anew = lessons();
        for (int place = 0; place < kept.size(); place++) {
            if (kept.get(place) < 0) {
                now = CourseFile.read(CourseEdits.of(now).insertLesson(place + 1, anew.get(place)));
            }
        }
        return now;
    }
}
