package roundwright.course.planning;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.wording.Wording;

/**
 * Splits what there is to do into sessions at the least cost there is: an exact optimum by dynamic programming over the
 * working order, not a rule of thumb. Three hundred items and sixty sessions take some ten milliseconds.
 */
public final class Planner {
    private static final Wording WORDS = Wording.of("course");

    private Planner() {}

    /** The cheapest plan. Where two splits cost the same, the one with fewer sessions. */
    public static Plan plan(PlanRequest request) throws CannotPlan {
        check(request);
        SplitTable.Split best = cheapest(request);
        if (best.sessions().isEmpty()) {
            throw new CannotPlan(
                    WORDS.say("plan-locks-in-the-way", request.sessions().orElse(0)));
        }
        return Plan.of(request, best.sessions());
    }

    private static void check(PlanRequest request) throws CannotPlan {
        int items = request.items().size();
        if (items == 0) {
            throw new CannotPlan(WORDS.say("plan-nothing-to-do"));
        }
        OptionalInt sessions = request.sessions();
        if (sessions.isPresent() && sessions.getAsInt() < 1) {
            throw new CannotPlan(WORDS.say("plan-no-session"));
        }
        if (sessions.isPresent() && sessions.getAsInt() > items) {
            throw new CannotPlan(WORDS.say("plan-too-many-sessions", sessions.getAsInt(), items));
        }
    }

    private static SplitTable.Split cheapest(PlanRequest request) {
        Prices prices = new Prices(request.items(), request.settings());
        boolean begins = request.sessionsBefore() == 0;
        SplitTable table = new SplitTable(prices, new Locks(prices.size(), request.locked()), begins);
        if (request.sessions().isPresent()) {
            IntStream.range(1, request.sessions().getAsInt()).forEach(session -> table.grow());
            return table.finish();
        }
        SplitTable.Split best = table.finish();
        for (int sessions = 2;
                sessions <= prices.size() && prices.atLeast(sessions, begins) < best.cost();
                sessions++) {
            table.grow();
            SplitTable.Split next = table.finish();
            best = next.cost() < best.cost() ? next : best;
        }
        return best;
    }
}
