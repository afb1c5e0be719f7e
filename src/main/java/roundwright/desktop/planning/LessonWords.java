package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import roundwright.course.Lesson;
import roundwright.course.file.FileProblem;
import roundwright.course.file.Section;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanRemark;
import roundwright.course.planning.PlanRemarks;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.preparation.PrepLine;
import roundwright.course.preparation.Preparation;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.wording.Wording;

/** What there is to say of a lesson, in sentences. */
public final class LessonWords {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;

    public LessonWords(Desk desk) {
        this.desk = desk;
    }

    /** "81 of 90 minutes: 25 to settle, recap, count and pack up, 6 to show what is new, 50 to work." */
    String minutes(PlannedLesson lesson) {
        double session =
                desk.course().orElseThrow().plan().orElseThrow().settings().minutes();
        return WORDS.say(
                "lesson-minutes",
                Math.round(lesson.minutes().total()),
                Math.round(session),
                Math.round(lesson.minutes().fixed()),
                Math.round(lesson.minutes().teaching()),
                Math.round(lesson.minutes().working()));
    }

    Optional<String> atHome(PlannedLesson lesson) {
        Plan plan = desk.course().orElseThrow().plan().orElseThrow();
        List<PlanItem> items = plan.atHome(lesson);
        double minutes = items.stream().mapToDouble(PlanItem::minutes).sum();
        return items.isEmpty()
                ? Optional.empty()
                : Optional.of(WORDS.say("lesson-at-home", ItemWords.names(items), Math.round(minutes)));
    }

    /** What should be known of a lesson: of its minutes and places, and of what the course file says in it. */
    public List<String> remarks(Lesson lesson, Optional<PlannedLesson> planned) {
        OpenCourse open = desk.course().orElseThrow();
        List<String> remarks = new ArrayList<>();
        open.plan()
                .ifPresent(plan -> planned.ifPresent(found -> PlanRemarks.of(plan).stream()
                        .filter(remark -> remark.lesson().equals(OptionalInt.of(found.number())))
                        .map(PlanRemark::text)
                        .forEach(remarks::add)));
        inFile(open, lesson)
                .map(Problem::message)
                .filter(text -> !remarks.contains(text))
                .forEach(remarks::add);
        return remarks;
    }

    /** The same in a few words each, for a row of the table; minutes over are not among them. */
    public List<String> briefly(Lesson lesson, Optional<PlannedLesson> planned) {
        OpenCourse open = desk.course().orElseThrow();
        List<String> said = new ArrayList<>();
        open.plan()
                .ifPresent(plan -> planned.ifPresent(found -> {
                    int most = plan.settings().mostNew(found.number() == 1);
                    if (found.introduces().size() > most) {
                        said.add(WORDS.say(
                                "brief-too-much-new", found.introduces().size(), most));
                    }
                    PlanItem end = plan.items().get(found.stretch().last());
                    if (end.prepares()
                            && !end.endsPart()
                            && found.stretch().last() + 1 < plan.items().size()) {
                        said.add(WORDS.say("brief-unprepared"));
                    }
                }));
        inFile(open, lesson)
                .filter(problem -> problem.severity() != Severity.ERROR)
                .map(problem -> "brief." + problem.key())
                .filter(WORDS::has)
                .map(WORDS::say)
                .forEach(said::add);
        return said.stream().distinct().toList();
    }

    /** That a lesson brings too much is said once, by the plan. */
    private static Stream<Problem> inFile(OpenCourse open, Lesson lesson) {
        Optional<Section> section = open.file().section(lesson);
        return open.file().problems().stream()
                .filter(problem -> !problem.problem().key().equals("too-many-new"))
                .filter(problem ->
                        section.filter(found -> inside(found, problem)).isPresent())
                .map(FileProblem::problem);
    }

    private static boolean inside(Section section, FileProblem problem) {
        int at = problem.problem().span().start();
        return section.span().start() <= at && at < section.span().end();
    }

    List<PrepLine> ready(PlannedLesson lesson) {
        OpenCourse open = desk.course().orElseThrow();
        return Preparation.of(open.course(), open.plan().orElseThrow()).lesson(lesson);
    }

    /** What the teacher wrote for people in a lesson, each with what it is. */
    List<String> own(Lesson lesson) {
        return lesson.words().stream()
                .filter(entry -> !entry.key().equals(Lesson.LOCKED))
                .map(entry -> WORDS.say("own-word." + entry.key(), entry.value()))
                .toList();
    }
}
