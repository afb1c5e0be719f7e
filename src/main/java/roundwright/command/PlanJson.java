package roundwright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanRemark;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.SessionCost;

/** A plan as one JSON value. Minutes and costs are given in full, so that the cost can be worked out again from the items. */
final class PlanJson {
    private PlanJson() {}

    static String line(Plan plan, List<PlanRemark> remarks) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("items", plan.items().stream().map(PlanJson::item).toList());
        json.put("lessons", plan.lessons().stream().map(PlanJson::lesson).toList());
        json.put("settings", settings(plan.settings()));
        json.put("cost", plan.cost());
        json.put("proven", plan.proven());
        json.put("remarks", remarks.stream().map(PlanRemark::text).toList());
        return Json.line(json);
    }

    private static Map<String, Object> item(PlanItem item) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("part", item.part());
        json.put("round", item.round());
        item.instruction().ifPresent(text -> json.put("instruction", text));
        json.put("stitches", item.stitches());
        json.put("working", item.working());
        json.put("counting", item.counting());
        json.put("teaching", item.teaching());
        json.put("new", item.introduces());
        json.put("shaping", item.shaping());
        json.put("range", item.range());
        json.put("ends_part", item.endsPart());
        json.put("prepares", item.prepares());
        json.put("homework", item.homework());
        return json;
    }

    private static Map<String, Object> lesson(PlannedLesson lesson) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", lesson.number());
        json.put("from", lesson.stretch().from());
        json.put("to", lesson.stretch().to());
        json.put(
                "homework_to", lesson.stretch().hasHomework() ? lesson.stretch().last() : null);
        Map<String, Object> minutes = new LinkedHashMap<>();
        minutes.put("fixed", lesson.minutes().fixed());
        minutes.put("teaching", lesson.minutes().teaching());
        minutes.put("working", lesson.minutes().working());
        json.put("minutes", minutes);
        json.put("over", lesson.over());
        json.put("new", new ArrayList<>(lesson.introduces()));
        json.put("cost", cost(lesson.cost()));
        return json;
    }

    private static Map<String, Object> cost(SessionCost cost) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("over", cost.over());
        json.put("unused", cost.unused());
        json.put("new", cost.introduced());
        json.put("stop", cost.stop());
        json.put("homework", cost.homework());
        return json;
    }

    private static Map<String, Object> settings(PlanSettings settings) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("minutes", settings.minutes());
        json.put("pace", settings.pace());
        json.put("most_new", settings.mostNew());
        json.put("homework_minutes", settings.homeworkMinutes());
        return json;
    }
}
