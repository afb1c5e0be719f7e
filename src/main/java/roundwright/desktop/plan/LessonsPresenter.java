package roundwright.desktop.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.PlannedLesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.LinesToMend;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.planning.ChosenLesson;
import roundwright.desktop.planning.LessonDates;
import roundwright.desktop.planning.LessonWords;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/** The lessons of the course in hand as a table of rows. */
public final class LessonsPresenter {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = Dates.as("EEE d MMM");

    private final Desk desk;
    private final ChosenLesson chosen;
    private final LessonWords words;
    private final LessonDates dates;

    public LessonsPresenter(Desk desk, ChosenLesson chosen) {
        this.desk = desk;
        this.chosen = chosen;
        this.words = new LessonWords(desk);
        this.dates = new LessonDates(desk);
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

    /** Which lines of the pattern cannot stay as they are; empty where all adds up. */
    public Optional<String> toMend() {
        return desk.course().flatMap(course -> LinesToMend.told(course.course().pattern()));
    }

    private LessonRow row(OpenCourse course, Lesson lesson) {
        Optional<PlannedLesson> planned = planned(course, lesson);
        Optional<LocalDate> date = dates.of(lesson.number());
        return new LessonRow(
                lesson.number(),
                lesson.name(),
                remark(lesson, planned),
                date.map(DAY::format).orElse(""),
                dates.held(lesson.number()).isPresent(),
                ItemWords.written(lesson.rounds()),
                introduces(course, planned),
                planned.map(found -> (int) Math.round(found.minutes().total())).orElse(0),
                lesson.minutes().orElse(course.course().settings().sessionMinutes()));
    }

    /** The plan leaves out lessons that go back before the one above. */
    private static Optional<PlannedLesson> planned(OpenCourse course, Lesson lesson) {
        int row = course.course().lessons().indexOf(lesson);
        return course.placed()
                .filter(placed -> placed.places().contains(row))
                .map(placed -> placed.plan().lessons().get(placed.places().indexOf(row)));
    }

    private String remark(Lesson lesson, Optional<PlannedLesson> planned) {
        List<String> remarks = new ArrayList<>();
        int over = planned.map(found -> (int) Math.round(found.over())).orElse(0);
        if (over > 0) {
            remarks.add(WORDS.say("minutes-over", over));
        }
        words.briefly(lesson, planned).forEach(remarks::add);
        if (lesson.locked()) {
            remarks.add(WORDS.say("lesson-locked-briefly"));
        }
        return String.join(" · ", remarks);
    }

    private static List<String> introduces(OpenCourse course, Optional<PlannedLesson> planned) {
        return planned.stream()
                .flatMap(lesson -> lesson.introduces().stream())
                .flatMap(id -> course.techniques().get(id).stream())
                .map(technique -> technique.name(course.terms()))
                .toList();
    }

    /** The row of the lesson in hand; -1 where there is none. */
    public int chosen() {
        return chosen.row();
    }

    /** Takes a lesson in hand, and with it its first round. */
    public void choose(int row) {
        chosen.choose(row);
    }

    /** The row of the lesson the group is in; -1 where it is in none. */
    public int current() {
        return desk.course()
                .flatMap(course ->
                        desk.lesson().map(lesson -> course.course().lessons().indexOf(lesson)))
                .orElse(-1);
    }
}
