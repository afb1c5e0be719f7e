package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The planner's splits are the cheapest there are. */
class PlannerTest {
    private static final int CASES = 4000;
    private static final long SEED = Long.getLong("seed", 20260);

    @Test
    void noSplitCostsLess() {
        for (int i = 0; i < CASES; i++) {
            Random random = new Random(SEED + i);
            int size = 1 + random.nextInt(i % 4 == 0 ? 14 : 11);
            List<PlanItem> items = Draws.items(random, size);
            PlanRequest request = new PlanRequest(
                    items,
                    Draws.settings(random),
                    Draws.sessions(random, size),
                    random.nextInt(3),
                    i % 3 == 0 ? locks(random, size) : List.of());
            assertCheapest(request, "seed " + (SEED + i) + ": " + request);
        }
    }

    private static List<Stretch> locks(Random random, int size) {
        List<Stretch> locks = new ArrayList<>();
        for (int from = random.nextInt(size); from < size; from += 1 + random.nextInt(size)) {
            int to = from + random.nextInt(size - from);
            locks.add(new Stretch(from, to, to + random.nextInt(size - to)));
            from = locks.get(locks.size() - 1).last();
        }
        return locks;
    }

    private static void assertCheapest(PlanRequest request, String input) {
        double least = EverySplit.leastCost(request);
        try {
            Plan plan = Planner.plan(request);
            List<Stretch> sessions =
                    plan.lessons().stream().map(PlannedLesson::stretch).toList();
            assertEquals(least, plan.cost(), 1e-7 * Math.max(1, least), input);
            assertEquals(EverySplit.cost(request, sessions), plan.cost(), 1e-7 * Math.max(1, least), input);
            assertTrue(sessions.containsAll(request.locked()), input);
            request.sessions().ifPresent(asked -> assertEquals(asked, sessions.size(), input));
            assertTrue(plan.proven(), input);
        } catch (CannotPlan impossible) {
            assertEquals(Double.POSITIVE_INFINITY, least, input);
        }
    }

    @Test
    void theFreeNumberIsTheCheapestOfAllNumbers() throws CannotPlan {
        for (int i = 0; i < 60; i++) {
            Random random = new Random(SEED + i);
            int size = 15 + random.nextInt(50);
            List<PlanItem> items = Draws.items(random, size);
            PlanSettings settings = Draws.settings(random);
            double least = Double.POSITIVE_INFINITY;
            for (int sessions = 1; sessions <= size; sessions++) {
                least = Math.min(least, cost(items, settings, OptionalInt.of(sessions)));
            }
            assertEquals(least, cost(items, settings, OptionalInt.empty()), 1e-7 * least, "seed " + (SEED + i));
        }
    }

    @Test
    void whatMakesPlanningEasierNeverCostsMore() throws CannotPlan {
        for (int i = 0; i < 300; i++) {
            Random random = new Random(SEED + i);
            List<PlanItem> items = Draws.items(random, 20 + random.nextInt(30));
            PlanSettings settings = Draws.settings(random);
            OptionalInt sessions = OptionalInt.of(1 + random.nextInt(12));
            double cost = cost(items, settings, sessions);
            String input = "seed " + (SEED + i) + " " + settings + " " + sessions;
            assertNoDearer(cost, cost(items, with(settings, 1, 0), sessions), input + " one more new technique");
            assertNoDearer(cost, cost(items, with(settings, 0, 10), sessions), input + " ten minutes more homework");
        }
    }

    private static PlanSettings with(PlanSettings settings, int moreNew, double moreHomework) {
        return new PlanSettings(
                settings.minutes(),
                settings.pace(),
                settings.mostNew() + moreNew,
                settings.homeworkMinutes() + moreHomework);
    }

    private static void assertNoDearer(double cost, double easier, String input) {
        assertTrue(easier <= cost + 1e-7 * cost, () -> input + ": " + easier + " > " + cost);
    }

    private static double cost(List<PlanItem> items, PlanSettings settings, OptionalInt sessions) throws CannotPlan {
        return Planner.plan(PlanRequest.of(items, settings, sessions)).cost();
    }

    @Test
    void threeHundredItemsAndSixtySessionsTakeLessThanATenthOfASecond() throws CannotPlan {
        List<PlanItem> items = Draws.items(new Random(SEED), 300);
        PlanSettings settings = new PlanSettings(90, 8, 2, 30);
        for (OptionalInt sessions : List.of(OptionalInt.of(60), OptionalInt.empty())) {
            long best = Long.MAX_VALUE;
            for (int i = 0; i < 5; i++) {
                long start = System.nanoTime();
                Planner.plan(PlanRequest.of(items, settings, sessions));
                best = Math.min(best, System.nanoTime() - start);
            }
            assertTrue(best < 100_000_000, sessions + " sessions took " + best / 1_000_000 + " ms at best");
        }
    }

    @Test
    void whatCannotBePlannedIsSaid() {
        List<PlanItem> items = Draws.items(new Random(SEED), 3);
        PlanSettings settings = new PlanSettings(90, 8, 2, 0);
        assertSays("no rounds", PlanRequest.of(List.of(), settings, OptionalInt.empty()));
        assertSays("at most 3 sessions", PlanRequest.of(items, settings, OptionalInt.of(4)));
        assertSays("at least one session", PlanRequest.of(items, settings, OptionalInt.of(0)));
        assertSays(
                "into one session",
                new PlanRequest(
                        items, settings, OptionalInt.of(1), 0, Collections.singletonList(new Stretch(0, 0, 0))));
    }

    private static void assertSays(String words, PlanRequest request) {
        String message =
                assertThrows(CannotPlan.class, () -> Planner.plan(request)).getMessage();
        assertTrue(message.contains(words), message);
    }
}
