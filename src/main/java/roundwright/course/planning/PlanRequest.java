package roundwright.course.planning;

import java.util.List;
import java.util.OptionalInt;

/**
 * What is to be split, and how.
 *
 * @param items what there is to do, in working order
 * @param settings what the split is measured by
 * @param sessions how many sessions there are; empty to take the number that is cheapest
 * @param sessionsBefore sessions that the course has had already; 0 for a course that has not begun
 * @param locked stretches that stay sessions as they are, in working order, none overlapping another
 */
public record PlanRequest(
        List<PlanItem> items, PlanSettings settings, OptionalInt sessions, int sessionsBefore, List<Stretch> locked) {
    public PlanRequest {
        items = List.copyOf(items);
        locked = List.copyOf(locked);
    }

    /** A course from its beginning, with nothing locked. */
    public static PlanRequest of(List<PlanItem> items, PlanSettings settings, OptionalInt sessions) {
        return new PlanRequest(items, settings, sessions, 0, List.of());
    }
}
