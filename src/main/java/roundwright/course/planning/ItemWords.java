package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import roundwright.course.RoundRange;
import roundwright.wording.Wording;

/** Names of items and of stretches of them, as a lesson's heading or a remark says them. */
public final class ItemWords {
    private static final Wording WORDS = Wording.of("course");

    private ItemWords() {}

    /** {@code Tower 5}, or the instruction as written. */
    public static String name(PlanItem item) {
        return item.instruction()
                .orElseGet(() -> item.part() + " " + item.round().getAsInt());
    }

    /** {@code Tower 1-5, “Stuff the tower firmly”, Tower 6}: everything in a row of items, neighbouring rounds drawn together. */
    public static String names(List<PlanItem> items) {
        List<String> names = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= items.size(); i++) {
            if (i == items.size() || !follows(items.get(i - 1), items.get(i))) {
                names.add(name(items.subList(from, i)));
                from = i;
            }
        }
        return String.join(", ", names);
    }

    /** What a lesson does in class, and after it as homework. */
    public static String lesson(Plan plan, PlannedLesson lesson) {
        String inClass = names(plan.inClass(lesson));
        return lesson.stretch().hasHomework()
                ? WORDS.say("plan-with-homework", inClass, names(plan.atHome(lesson)))
                : inClass;
    }

    private static String name(List<PlanItem> run) {
        PlanItem first = run.get(0);
        return run.size() == 1
                ? first.instruction().map(ItemWords::quoted).orElseGet(() -> name(first))
                : name(first) + "-" + run.get(run.size() - 1).round().getAsInt();
    }

    private static String quoted(String instruction) {
        return WORDS.say("plan-instruction", withoutStop(instruction));
    }

    static String withoutStop(String text) {
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    /** The rounds among some items, neighbouring ones drawn together. */
    public static List<RoundRange> rounds(List<PlanItem> items) {
        List<RoundRange> ranges = new ArrayList<>();
        for (PlanItem item : items) {
            if (item.round().isPresent()) {
                add(ranges, item.part(), item.round().getAsInt());
            }
        }
        return ranges;
    }

    private static void add(List<RoundRange> ranges, String part, int round) {
        RoundRange last = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
        if (last != null && last.part().equals(part) && last.last() + 1 == round) {
            ranges.set(ranges.size() - 1, new RoundRange(part, last.first(), round));
        } else {
            ranges.add(new RoundRange(part, round, round));
        }
    }

    /** {@code Tower 4-6, Lantern 1}, as a course file writes it. */
    public static String written(List<RoundRange> ranges) {
        return ranges.stream()
                .map(range ->
                        range.part() + " " + range.first() + (range.last() > range.first() ? "-" + range.last() : ""))
                .collect(Collectors.joining(", "));
    }

    private static boolean follows(PlanItem one, PlanItem next) {
        return one.part().equals(next.part())
                && one.round().isPresent()
                && next.round().isPresent()
                && one.round().getAsInt() + 1 == next.round().getAsInt();
    }
}
