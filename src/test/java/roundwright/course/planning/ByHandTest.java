package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static roundwright.course.planning.WorkedCases.ends;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Moving, merging, splitting, locking and renaming by hand. */
class ByHandTest {
    private static final PlanSettings SETTINGS = new PlanSettings(45, 10, 2, 10);
    private Plan plan;

    /** Lessons of items 0-2, 3 with 4 as homework, 5-6. */
    @BeforeEach
    void begin() throws CannotPlan {
        List<PlanItem> items = WorkedCases.items("10 new", "10 home", "10", "20", "10 home", "10 home new", "10");
        List<Stretch> locked = List.of(new Stretch(0, 2, 2), new Stretch(3, 3, 4), new Stretch(5, 6, 6));
        plan = Planner.plan(new PlanRequest(items, SETTINGS, OptionalInt.empty(), 0, locked));
        for (int lesson = 0; lesson < 3; lesson++) {
            plan = ByHand.lock(plan, lesson, false);
        }
        assertEquals("2 3+4 6", ends(plan));
    }

    private interface Change {
        Plan in(Plan plan) throws CannotPlan;
    }

    private record Case(String name, Change change, String ends) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Case> cases() {
        return Stream.of(
                new Case("an item goes to the next lesson", plan -> ByHand.moveStart(plan, 1, 2), "1 3+4 6"),
                new Case("the next lesson's class is given up", plan -> ByHand.moveStart(plan, 1, 4), "3 4 6"),
                new Case("homework is dropped", plan -> ByHand.moveStart(plan, 2, 4), "2 3 6"),
                new Case("homework grows", plan -> ByHand.moveStart(plan, 2, 6), "2 3+5 6"),
                new Case("two lessons become one", plan -> ByHand.merge(plan, 0), "3+4 6"),
                new Case("homework between is worked in class", plan -> ByHand.merge(plan, 1), "2 6"),
                new Case("one lesson becomes two", plan -> ByHand.split(plan, 0, 1), "0 2 3+4 6"),
                new Case("homework becomes a lesson", plan -> ByHand.split(plan, 1, 4), "2 3 4 6"),
                new Case("the end goes home", plan -> ByHand.giveHomework(ByHand.merge(plan, 1), 1, 6), "2 6"),
                new Case("homework is taken into class", plan -> ByHand.giveHomework(plan, 1, 4), "2 4 6"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void changesThePlan(Case given) throws CannotPlan {
        Plan changed = given.change().in(plan);
        assertEquals(given.ends(), ends(changed));
        assertFalse(changed.proven());
        assertTrueToItsItems(changed);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertRefused("nothing to do in class", plan -> ByHand.moveStart(plan, 1, 0));
        assertRefused("Merge the two", plan -> ByHand.moveStart(plan, 1, 5));
        assertRefused("no lesson 4", plan -> ByHand.merge(plan, 2));
        assertRefused("not in lesson 1", plan -> ByHand.split(plan, 0, 0));
        assertRefused("“Tower 3” should not", plan -> ByHand.giveHomework(plan, 0, 1));
        assertRefused("Lesson 2 is locked", plan -> ByHand.moveStart(ByHand.lock(plan, 1, true), 1, 2));
    }

    private void assertRefused(String words, Change change) {
        String message = assertThrows(CannotPlan.class, () -> change.in(plan)).getMessage();
        assertTrue(message.contains(words), message);
    }

    @Test
    void titlesAndLocksStay() throws CannotPlan {
        Plan named = ByHand.lock(ByHand.rename(plan, 1, " Up the wall "), 1, true);
        Plan anew = ByHand.planAnew(named, new PlanSettings(60, 10, 2, 0), OptionalInt.empty());
        PlannedLesson kept = anew.lessons().get(anew.lessonOf(3));
        assertEquals(new Stretch(3, 3, 4), kept.stretch());
        assertEquals(Optional.of("Up the wall"), kept.name());
        assertTrue(kept.locked());
        assertTrue(anew.proven());
        assertEquals(
                Optional.empty(), ByHand.rename(named, 1, " ").lessons().get(1).name());
    }

    @Test
    void anyChangesKeepEveryItemOnceAndPricedAsDefined() throws CannotPlan {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<PlanItem> items = Draws.items(random, 2 + random.nextInt(20));
            Plan changed = Planner.plan(PlanRequest.of(items, Draws.settings(random), OptionalInt.empty()));
            for (int i = 0; i < 20; i++) {
                changed = anyChange(random, changed);
                assertTrueToItsItems(changed);
            }
        }
    }

    private static Plan anyChange(Random random, Plan plan) {
        int lesson = random.nextInt(plan.lessons().size());
        int item = random.nextInt(plan.items().size());
        try {
            return switch (random.nextInt(4)) {
                case 0 -> ByHand.moveStart(plan, lesson, item);
                case 1 -> ByHand.merge(plan, lesson);
                case 2 -> ByHand.giveHomework(plan, lesson, item);
                default -> ByHand.split(plan, plan.lessonOf(item), item);
            };
        } catch (CannotPlan refused) {
            return plan;
        }
    }

    private static void assertTrueToItsItems(Plan plan) {
        PlanRequest request =
                new PlanRequest(plan.items(), plan.settings(), OptionalInt.empty(), plan.sessionsBefore(), List.of());
        List<Stretch> sessions =
                plan.lessons().stream().map(PlannedLesson::stretch).toList();
        assertEquals(EverySplit.cost(request, sessions), plan.cost(), 1e-7 * Math.max(1, plan.cost()));
        assertEquals(plan.items().size() - 1, sessions.get(sessions.size() - 1).last());
    }
}
