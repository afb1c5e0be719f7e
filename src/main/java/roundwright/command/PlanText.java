package roundwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import roundwright.course.Course;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanRemark;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.SessionCost;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/** A plan as a teacher reads it: lesson by lesson what is worked, how long it takes and what is new, then what to know of it. */
final class PlanText {
    private static final Wording WORDS = Wording.of("command");

    private final Course course;
    private final Plan plan;
    private final List<PlanRemark> remarks;
    private final List<Plan> others;

    /**
     * @param others plans with another number of lessons, to compare
     */
    PlanText(Course course, Plan plan, List<PlanRemark> remarks, List<Plan> others) {
        this.others = others;
        this.course = course;
        this.plan = plan;
        this.remarks = remarks;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        int lessons = plan.lessons().size();
        String pace = number(plan.settings().pace());
        lines.add(WORDS.say(
                "plan-heading", course.name(), lessons, number(plan.settings().minutes()), pace));
        about(OptionalInt.empty())
                .forEach(remark ->
                        lines.add(WORDS.say("plan-line.remark", remark.text()).strip()));
        for (PlannedLesson lesson : plan.lessons()) {
            lines.add("");
            addLesson(lesson, lines);
        }
        lines.add("");
        lines.add(cost());
        others.forEach(other ->
                lines.add(WORDS.say("plan-other-number", other.lessons().size(), number(other.cost()))));
        return lines;
    }

    private void addLesson(PlannedLesson lesson, List<String> lines) {
        String total = number(Math.round(lesson.minutes().total()));
        String length = number(plan.settings().minutes());
        lines.add(WORDS.say("plan-lesson", lesson.number(), ItemWords.names(plan.inClass(lesson))));
        if (!lesson.introduces().isEmpty()) {
            lines.add(WORDS.say("plan-line.new", names(lesson.introduces())));
        }
        if (lesson.stretch().hasHomework()) {
            lines.add(WORDS.say("plan-line.homework", ItemWords.names(plan.atHome(lesson))));
        }
        long fixed = Math.round(lesson.minutes().fixed());
        long teaching = Math.round(lesson.minutes().teaching());
        long working = Math.round(lesson.minutes().working());
        lines.add(WORDS.say("plan-line.minutes", total, length, fixed, teaching, working));
        about(OptionalInt.of(lesson.number()))
                .forEach(remark -> lines.add(WORDS.say("plan-line.remark", remark.text())));
    }

    private List<PlanRemark> about(OptionalInt lesson) {
        return remarks.stream().filter(remark -> remark.lesson().equals(lesson)).toList();
    }

    private String names(List<String> ids) {
        Techniques techniques = course.techniques();
        return ids.stream()
                .map(id -> techniques
                        .get(id)
                        .map(technique -> technique.name(course.pattern().terms()))
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }

    private String cost() {
        List<SessionCost> costs =
                plan.lessons().stream().map(PlannedLesson::cost).toList();
        return WORDS.say(
                "plan-cost",
                number(plan.cost()),
                number(costs.stream().mapToDouble(SessionCost::over).sum()),
                number(costs.stream().mapToDouble(SessionCost::unused).sum()),
                number(costs.stream().mapToDouble(SessionCost::introduced).sum()),
                number(costs.stream()
                        .mapToDouble(one -> one.stop() + one.homework())
                        .sum()));
    }

    /** With one place after the point where it is not whole. */
    private static String number(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }
}
