package roundwright.desktop.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanRemark;
import roundwright.course.planning.PlanRemarks;
import roundwright.course.planning.PlannedLesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.Session;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** The lessons of the course in hand as a table of rows. */
public final class LessonsPresenter {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);

    private final Desk desk;

    public LessonsPresenter(Desk desk) {
        this.desk = desk;
    }

    public List<LessonRow> rows() {
        return desk.course()
                .map(course -> course.course().lessons().stream()
                        .map(lesson -> row(course, lesson))
                        .toList())
                .orElse(List.of());
    }

    /** "8 lessons of 90 minutes". */
    public String heading() {
        return desk.course()
                .map(course -> WORDS.say(
                        "lessons-of",
                        course.course().lessons().size(),
                        course.course().settings().sessionMinutes()))
                .orElse("");
    }

    private LessonRow row(OpenCourse course, Lesson lesson) {
        Optional<PlannedLesson> planned = planned(course, lesson);
        Optional<LocalDate> held = held(lesson);
        Optional<LocalDate> date = held.or(() -> reckoned(lesson));
        return new LessonRow(
                lesson.number(),
                lesson.name(),
                remark(course, lesson, planned),
                date.map(DAY::format).orElse(""),
                held.isPresent(),
                ItemWords.written(lesson.rounds()),
                introduces(course, lesson),
                planned.map(found -> (int) Math.round(found.minutes().total())).orElse(0),
                lesson.minutes().orElse(course.course().settings().sessionMinutes()));
    }

    /** The plan leaves out lessons that go back before the one above; what it keeps is found by the rounds it begins with. */
    private static Optional<PlannedLesson> planned(OpenCourse course, Lesson lesson) {
        return course.plan()
                .flatMap(plan -> plan.lessons().stream()
                        .filter(found -> begins(plan, found, lesson))
                        .findFirst());
    }

    private static boolean begins(Plan plan, PlannedLesson planned, Lesson lesson) {
        return plan.inClass(planned).stream()
                .filter(item -> item.round().isPresent())
                .findFirst()
                .map(item -> lesson.rounds().stream()
                        .anyMatch(range ->
                                range.contains(item.part(), item.round().getAsInt())))
                .orElse(false);
    }

    private static String remark(OpenCourse course, Lesson lesson, Optional<PlannedLesson> planned) {
        List<String> remarks = new ArrayList<>();
        int over = planned.map(found -> (int) Math.round(found.over())).orElse(0);
        if (over > 0) {
            remarks.add(WORDS.say("minutes-over", over));
        }
        OptionalInt number =
                planned.map(found -> OptionalInt.of(found.number())).orElse(OptionalInt.empty());
        course.plan()
                .ifPresent(plan -> PlanRemarks.of(plan).stream()
                        .filter(remark -> number.isPresent() && remark.lesson().equals(number))
                        .map(PlanRemark::text)
                        .findFirst()
                        .filter(text -> over == 0)
                        .ifPresent(remarks::add));
        return String.join(" · ", remarks);
    }

    private static List<String> introduces(OpenCourse course, Lesson lesson) {
        List<String> names = new ArrayList<>();
        course.newByPlace().forEach((place, techniques) -> {
            boolean here = lesson.rounds().stream().anyMatch(range -> in(range, place.part(), place.round()));
            if (here) {
                techniques.forEach(technique -> names.add(technique.name(course.terms())));
            }
        });
        return names;
    }

    private static boolean in(RoundRange range, String part, int round) {
        return range.contains(part, round);
    }

    private Optional<LocalDate> held(Lesson lesson) {
        return desk.group().stream()
                .flatMap(group -> group.sessions().stream())
                .filter(session -> session.lesson().equals(OptionalInt.of(lesson.number())))
                .map(Session::date)
                .findFirst();
    }

    /** Weekly from the group's start. */
    private Optional<LocalDate> reckoned(Lesson lesson) {
        return desk.group()
                .map(GroupView::group)
                .flatMap(group -> group.start().map(start -> start.plusWeeks(lesson.number() - 1L)));
    }

    /** The row of the lesson in which the chosen round is worked; -1 where it is in none. */
    public int chosen() {
        return desk.course()
                .flatMap(course -> desk.place()
                        .flatMap(course::lessonOf)
                        .map(lesson -> course.course().lessons().indexOf(lesson)))
                .orElse(-1);
    }

    /** Chooses the first round of a lesson. */
    public void choose(int row) {
        desk.course().ifPresent(course -> {
            Lesson lesson = course.course().lessons().get(row);
            course.places(lesson).stream().findFirst().ifPresent(desk::choosePlace);
        });
    }

    /** The row of the lesson the group is in; -1 where it is in none. */
    public int current() {
        return desk.course()
                .flatMap(course ->
                        desk.lesson().map(lesson -> course.course().lessons().indexOf(lesson)))
                .orElse(-1);
    }
}
