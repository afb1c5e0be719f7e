package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The plan of a running group, made anew. */
class ReplanningTest {
    private static final PlanSettings SETTINGS = new PlanSettings(45, 10, 2, 0);

    /** Eleven rounds of a hundred stitches: ten minutes each, a minute of counting. */
    private static List<PlanItem> rounds() {
        return IntStream.rangeClosed(1, 11)
                .mapToObj(number -> new PlanItem(
                        "Tower",
                        OptionalInt.of(number),
                        Optional.empty(),
                        100,
                        10,
                        0,
                        0,
                        List.of(),
                        false,
                        number,
                        number == 11,
                        false,
                        true))
                .toList();
    }

    private static Plan plan() throws CannotPlan {
        Plan plan = Planner.plan(PlanRequest.of(rounds(), SETTINGS, OptionalInt.empty()));
        assertEquals("2 4 6 8 10", WorkedCases.ends(plan));
        return plan;
    }

    @Test
    void aSlowGroupGetsShorterLessonsFromWhereItIs() throws CannotPlan {
        Replanning anew = Replanning.of(plan(), new GroupNow(3, 2, 5, List.of()), OptionalInt.empty());
        assertEquals(3, anew.rest().lessons().get(0).number());
        assertEquals("0 1 2 3 4 5 6 7", WorkedCases.ends(anew.rest()));
        assertEquals(20, anew.rest().items().get(0).working());
        LessonChange first = anew.changes().get(0);
        assertEquals(new LessonChange(3, Optional.of("Tower 6-7"), Optional.of("Tower 4")), first);
        assertEquals(Optional.empty(), anew.changes().get(7).before());
        assertEquals(8, anew.changes().size());
    }

    @Test
    void aGroupOnItsWayKeepsItsPlan() throws CannotPlan {
        Plan named = ByHand.rename(plan(), 3, "The lamp");
        Replanning anew = Replanning.of(named, new GroupNow(5, 2, 10, List.of()), OptionalInt.of(3));
        assertEquals(Optional.of("The lamp"), anew.rest().lessons().get(1).name());
        assertEquals(3, anew.changes().size());
        assertTrue(
                anew.changes().stream().allMatch(LessonChange::same),
                anew.changes().toString());
    }

    @Test
    void lockedLessonsStay() throws CannotPlan {
        Plan locked = ByHand.lock(plan(), 3, true);
        Replanning anew = Replanning.of(locked, new GroupNow(5, 2, 4, List.of()), OptionalInt.empty());
        Stretch kept = new Stretch(2, 3, 3);
        assertTrue(anew.rest().lessons().stream()
                .anyMatch(lesson -> lesson.stretch().equals(kept) && lesson.locked()));
    }

    @Test
    void saysWhoIsLeftBehindAndByHowMuch() throws CannotPlan {
        List<Learner> learners = List.of(
                new Learner("Odile", 6, 12),
                new Learner("Piet", 2, 10),
                new Learner("Runa", 5, 5),
                new Learner("Sol", 5, 9.9));
        Replanning anew = Replanning.of(plan(), new GroupNow(5, 2, 10, learners), OptionalInt.of(3));
        // Runa needs ten minutes more for each of the six rounds left, in three lessons
        assertEquals(List.of(new LeftBehind("Piet", 3, 30, 0), new LeftBehind("Runa", 0, 0, 20)), anew.behind());
    }

    @Test
    void aGroupIsTakenAtItsFirstQuarter() {
        List<Learner> learners = List.of(
                new Learner("A", 9, 4),
                new Learner("B", 5, 10),
                new Learner("C", 7, 6),
                new Learner("D", 7, 8),
                new Learner("E", 2, 2));
        GroupNow now = GroupNow.of(learners, 3);
        assertEquals(5, now.done());
        assertEquals(4, now.pace());
        assertEquals(3.5, Quantiles.of(new double[] {8, 2, 6, 4}, 0.25));
    }

    @Test
    void aPieceThatIsDoneNeedsNoPlan() {
        assertThrows(
                CannotPlan.class, () -> Replanning.of(plan(), new GroupNow(11, 5, 10, List.of()), OptionalInt.empty()));
    }

    @Test
    void theRestIsAsCheapAsCanBe() throws CannotPlan {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<PlanItem> items = Draws.items(random, 6 + random.nextInt(12));
            PlanSettings settings = Draws.settings(random);
            Plan plan = Planner.plan(PlanRequest.of(items, settings, OptionalInt.empty()));
            int done = items.size() - 1 - random.nextInt(6);
            GroupNow now = new GroupNow(done, 1 + random.nextInt(3), settings.pace(), Collections.emptyList());
            Replanning anew = Replanning.of(plan, now, OptionalInt.empty());
            PlanRequest rest = new PlanRequest(
                    items.subList(done, items.size()), settings, OptionalInt.empty(), now.sessionsHeld(), List.of());
            double least = EverySplit.leastCost(rest);
            assertEquals(least, anew.rest().cost(), 1e-7 * Math.max(1, least), "seed " + seed);
            assertFalse(anew.rest().lessons().isEmpty());
        }
    }
}
