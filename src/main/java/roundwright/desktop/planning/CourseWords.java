package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.preparation.PrepLine;
import roundwright.course.preparation.Preparation;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** What there is to say of the whole course. */
final class CourseWords {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;

    CourseWords(Desk desk) {
        this.desk = desk;
    }

    /** A lesson and what comes first in it, a line a technique. */
    record Step(String lesson, List<String> techniques) {
        Step {
            techniques = List.copyOf(techniques);
        }
    }

    /** What to get ready for the whole course; nothing where it has no lessons. */
    List<PrepLine> ready() {
        return desk.course()
                .flatMap(open -> open.plan()
                        .map(plan -> Preparation.of(open.course(), plan).wholeCourse()))
                .orElse(List.of());
    }

    /** The techniques in the order of the lessons in which they come first, each with what it needs. */
    List<Step> order() {
        return desk.course()
                .flatMap(open -> open.plan().map(plan -> order(open, plan)))
                .orElse(List.of());
    }

    private static List<Step> order(OpenCourse open, Plan plan) {
        List<Step> steps = new ArrayList<>();
        for (PlannedLesson lesson : plan.lessons()) {
            List<String> lines = lesson.introduces().stream()
                    .flatMap(id -> open.techniques().get(id).stream())
                    .map(technique -> line(open, plan, technique))
                    .toList();
            if (!lines.isEmpty()) {
                String name = lesson.name()
                        .map(title -> WORDS.say("lesson-named", lesson.number(), title))
                        .orElseGet(() -> WORDS.say("lesson-numbered", lesson.number()));
                steps.add(new Step(name, lines));
            }
        }
        return steps;
    }

    private static String line(OpenCourse open, Plan plan, Technique technique) {
        Stream<String> needed = Stream.concat(technique.needs().all().stream(), technique.needs().oneOf().stream())
                .flatMap(id -> open.techniques().get(id).stream())
                .map(need -> need(open, plan, need));
        List<String> needs = needed.toList();
        String name = technique.name(open.terms());
        return needs.isEmpty()
                ? WORDS.say("technique-first", name)
                : WORDS.say("technique-needs", name, Wording.list(needs));
    }

    private static String need(OpenCourse open, Plan plan, Technique need) {
        String name = need.name(open.terms());
        return plan.lessons().stream()
                .filter(lesson -> lesson.introduces().contains(need.id()))
                .findFirst()
                .map(lesson -> WORDS.say("technique-from", name, lesson.number()))
                .orElse(name);
    }
}
