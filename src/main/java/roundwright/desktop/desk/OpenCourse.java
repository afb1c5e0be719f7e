package roundwright.desktop.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.WrittenLessons;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.notation.Terms;
import roundwright.pattern.Round;
import roundwright.pattern.WorkedAs;
import roundwright.pattern.chart.ChartSetting;
import roundwright.store.KeptCourse;
import roundwright.technique.FirstUses;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;

/**
 * A course of the file, read.
 *
 * @param kept as the file holds it
 * @param file its text with the places of everything in it
 * @param course what its text says
 * @param expectations what the pattern says of each round
 * @param places all rounds in working order
 * @param placed the teacher's lessons as a plan; empty where there are none
 * @param index what stands where, for looking up
 */
public record OpenCourse(
        KeptCourse kept,
        CourseFile file,
        Course course,
        Expectations expectations,
        List<RoundPlace> places,
        Optional<WrittenLessons.Placed> placed,
        CourseIndex index) {

    /** Reads the text; any text can be read. */
    public static OpenCourse of(KeptCourse kept) {
        return of(kept, CourseFile.read(kept.text()));
    }

    /** A course whose text has been read already. */
    static OpenCourse of(KeptCourse kept, CourseFile file) {
        Course course = file.course();
        Expectations expectations = Expectations.of(course.pattern());
        return new OpenCourse(
                kept,
                file,
                course,
                expectations,
                expectations.places(),
                plan(course),
                CourseIndex.of(course, expectations.places()));
    }

    /** The same course with another text. */
    public OpenCourse with(CourseFile other) {
        return of(new KeptCourse(kept.id(), kept.name(), other.text()), other);
    }

    private static Optional<WrittenLessons.Placed> plan(Course course) {
        PlanSettings settings = settings(course);
        PlanItems items = PlanItems.of(course.uses(), settings.pace());
        return WrittenLessons.placed(items.items(), settings, course.lessons());
    }

    private static PlanSettings settings(Course course) {
        return new PlanSettings(
                course.settings().sessionMinutes(),
                course.settings().pace().orElse(PlanItems.USUAL_PACE),
                PlanSettings.USUAL_MOST_NEW,
                0);
    }

    /** The teacher's lessons with their minutes; empty where there are none. */
    public Optional<Plan> plan() {
        return placed.map(WrittenLessons.Placed::plan);
    }

    /** The catalogue and the course's own techniques. */
    public Techniques techniques() {
        return course.techniques();
    }

    /** Where each technique comes first. */
    public FirstUses uses() {
        return course.uses();
    }

    /** What the course's plans are measured by. */
    public PlanSettings planSettings() {
        return settings(course);
    }

    public Terms terms() {
        return course.pattern().terms();
    }

    /** How the chart of a round is laid out for a hand. */
    public ChartSetting chart(RoundPlace place, boolean leftHanded) {
        WorkedAs worked = course.pattern().part(place.part()).map(WorkedAs::of).orElse(WorkedAs.ROUNDS);
        return ChartSetting.of(worked, place.round(), leftHanded);
    }

    public Optional<Round> round(RoundPlace place) {
        return expectations.round(place);
    }

    /** The count to reach in a round; empty where the pattern does not let it be known. */
    public OptionalInt expected(RoundPlace place) {
        return expectations.count(place);
    }

    public Optional<Lesson> lesson(int number) {
        return course.lessons().stream()
                .filter(lesson -> lesson.number() == number)
                .findFirst();
    }

    /** The rounds worked in a lesson, in class or as its homework, in working order. */
    public List<RoundPlace> places(Lesson lesson) {
        return places().stream()
                .filter(place -> lessonOf(place).filter(lesson::equals).isPresent())
                .toList();
    }

    /** The first lesson in which a round is worked, in class or at home. */
    public Optional<Lesson> lessonOf(RoundPlace place) {
        return index.lesson(place);
    }

    /** Where a round stands in working order, from 0; -1 where the course has no such round. */
    public int order(RoundPlace place) {
        return index.order(place);
    }

    /** The round after this one, in working order. */
    public Optional<RoundPlace> after(RoundPlace place) {
        int next = index.order(place) + 1;
        return next > 0 && next < places.size() ? Optional.of(places.get(next)) : Optional.empty();
    }

    /** Techniques that are new in a round, or in an instruction just before it. */
    public List<Technique> newIn(RoundPlace place) {
        return newByPlace().getOrDefault(place, List.of());
    }

    /** New techniques by the round in which, or just before which, they come; those of a part's closing lines by its last round. */
    public Map<RoundPlace, List<Technique>> newByPlace() {
        return index.introduced();
    }
}
