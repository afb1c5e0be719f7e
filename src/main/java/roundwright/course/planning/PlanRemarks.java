package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import roundwright.wording.Wording;

/** What the minutes and places of a plan give reason to say. */
public final class PlanRemarks {
    private static final Wording WORDS = Wording.of("course");

    /** Less than this over the session's end is no more than a slow packing up. */
    private static final double WORTH_SAYING = 3;

    private PlanRemarks() {}

    /** Remarks on the whole plan, then on each lesson, in order. */
    public static List<PlanRemark> of(Plan plan) {
        List<PlanRemark> remarks = new ArrayList<>();
        double left = plan.settings().minutes() - PlanSettings.fixedMinutes(false);
        if (left <= 0) {
            remarks.add(new PlanRemark(
                    OptionalInt.empty(),
                    WORDS.say(
                            "plan-session-too-short",
                            round(plan.settings().minutes()),
                            round(PlanSettings.fixedMinutes(false)))));
        }
        for (PlannedLesson lesson : plan.lessons()) {
            if (left > 0) {
                addMinutes(plan, lesson, remarks);
            }
            addNew(plan, lesson, remarks);
            addStop(plan, lesson, remarks);
        }
        return List.copyOf(remarks);
    }

    private static void addMinutes(Plan plan, PlannedLesson lesson, List<PlanRemark> remarks) {
        if (lesson.over() < WORTH_SAYING) {
            return;
        }
        double length = plan.settings().minutes();
        double fixed = lesson.minutes().fixed();
        List<PlanItem> tooLong = plan.inClass(lesson).stream()
                .filter(item -> item.minutes() > length - fixed)
                .toList();
        if (tooLong.isEmpty()) {
            long total = round(lesson.minutes().total());
            say(remarks, lesson, WORDS.say("plan-over", lesson.number(), total, round(length), round(lesson.over())));
        }
        for (PlanItem item : tooLong) {
            long needed = (long) Math.ceil(fixed + item.minutes());
            String name = ItemWords.name(item);
            long minutes = round(item.minutes());
            say(remarks, lesson, WORDS.say("plan-item-too-long", name, minutes, round(length - fixed), needed));
        }
    }

    private static void addNew(Plan plan, PlannedLesson lesson, List<PlanRemark> remarks) {
        int most = plan.settings().mostNew(lesson.number() == 1);
        int introduced = lesson.introduces().size();
        if (introduced > most) {
            say(remarks, lesson, WORDS.say("plan-too-much-new", lesson.number(), introduced, most));
        }
    }

    private static void addStop(Plan plan, PlannedLesson lesson, List<PlanRemark> remarks) {
        PlanItem end = plan.items().get(lesson.stretch().last());
        boolean goesOn = lesson.stretch().last() + 1 < plan.items().size() && !end.endsPart();
        if (goesOn && end.prepares()) {
            say(remarks, lesson, WORDS.say("plan-stops-unprepared", lesson.number(), ItemWords.name(end)));
        }
    }

    private static void say(List<PlanRemark> remarks, PlannedLesson lesson, String text) {
        remarks.add(new PlanRemark(OptionalInt.of(lesson.number()), text));
    }

    private static long round(double minutes) {
        return Math.round(minutes);
    }
}
