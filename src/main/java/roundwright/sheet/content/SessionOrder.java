package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import roundwright.course.Lesson;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.PlannedLesson;
import roundwright.sheet.markup.Element;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** The order of a session with its minutes: settle, recap, teach just before it is needed, work, count, pack up. */
final class SessionOrder {
    private static final Wording WORDS = Wording.of("sheet");

    private final CourseWork work;
    private final Lesson lesson;
    private final Element body = Element.of("tbody");
    private double clock;

    private SessionOrder(CourseWork work, Lesson lesson) {
        this.work = work;
        this.lesson = lesson;
    }

    /** A table, under a sentence on its length; empty where the lesson has no rounds of the pattern. */
    static List<Element> of(CourseWork work, Lesson lesson) {
        return work.planned(lesson)
                .map(planned -> new SessionOrder(work, lesson).table(work.plan().orElseThrow(), planned))
                .orElse(List.of());
    }

    private List<Element> table(Plan plan, PlannedLesson planned) {
        boolean first = planned.number() == 1;
        row(PlanSettings.SETTLE, WORDS.say("order-settle"), List.of());
        if (!first) {
            row(PlanSettings.RECAP, WORDS.say("order-recap"), lesson.words("recap"));
        }
        List<PlanItem> run = new ArrayList<>();
        for (PlanItem item : plan.inClass(planned)) {
            if (item.teaching() > 0) {
                work(run);
                teach(item);
            }
            run.add(item);
        }
        work(run);
        row(PlanSettings.CHECK, WORDS.say("order-check"), List.of());
        row(PlanSettings.PACK_UP, WORDS.say("order-pack-up"), List.of());
        Element head = Boxes.headRow(WORDS.say("column-from"), WORDS.say("column-minutes"), WORDS.say("column-what"));
        return List.of(Element.styled("p", "lead", length()), Element.styled("table", "order", head, body));
    }

    private String length() {
        long planned = Math.round(clock);
        int length = work.minutes(lesson);
        return WORDS.say(planned > length ? "order-over" : "order-length", planned, length, Math.abs(length - planned));
    }

    private void teach(PlanItem item) {
        List<Technique> taught = work.taughtAt(item);
        String names =
                taught.stream().map(technique -> technique.name(work.terms())).collect(Collectors.joining(", "));
        row(item.teaching(), WORDS.say("order-teach", names), List.of());
    }

    private void work(List<PlanItem> run) {
        if (!run.isEmpty()) {
            double minutes = run.stream()
                    .mapToDouble(item -> item.working() + item.counting())
                    .sum();
            String names = LessonWords.dashed(ItemWords.names(run));
            row(minutes, WORDS.say("order-work", names), List.of());
            run.clear();
        }
    }

    private void row(double minutes, String what, List<String> more) {
        Element cell = Boxes.cell("what", Element.of("p", what));
        more.forEach(text -> cell.add(Element.styled("p", "more", text)));
        body.add(Element.of(
                "tr",
                Boxes.rowHead(String.valueOf(Math.round(clock))),
                Boxes.cell("minutes", String.valueOf(Math.max(1, Math.round(minutes)))),
                cell));
        clock += minutes;
    }
}
