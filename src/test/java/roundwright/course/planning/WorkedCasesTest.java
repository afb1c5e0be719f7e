package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static roundwright.course.planning.WorkedCases.ends;
import static roundwright.course.planning.WorkedCases.items;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Splits worked out on paper. A session of 45 minutes leaves 30 in the first lesson, 20 in the others. */
class WorkedCasesTest {
    private record Case(
            String name, List<PlanItem> items, int mostNew, double homework, int sessions, String ends, double cost) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Case> cases() {
        return Stream.of(
                new Case("all of it fits one session", items("10", "20"), 2, 0, 0, "1", 0),
                new Case("two sessions, both full", items("10", "10", "10", "10", "10"), 2, 0, 0, "2 4", 1),
                new Case("forced into one: 4 × 20²", items("10", "10", "10", "10", "10"), 2, 0, 1, "4", 1600),
                // 10 unused in the second session: 0.25 × 10² = 25, and two stops
                new Case("one session too many", items("10", "10", "10", "10", "10"), 2, 0, 3, "2 3 4", 27),
                new Case("stops after shaping", items("30 shaping", "20"), 2, 0, 0, "0 1", 2),
                new Case("stops inside a range", items("30 shaping", "20 range"), 2, 0, 0, "0 1", 3),
                new Case("stops unprepared", items("30 prepares", "20 range"), 2, 0, 0, "0 1", 6),
                new Case("stops at a part's end", items("30 prepares ends", "20"), 2, 0, 0, "0 1", 0),
                // one minute over or one unused: 4 × 1² + 1 against 0.25 × 1² + 3; the second is cheaper
                new Case("unused is cheaper than over", items("29", "2 range", "17"), 2, 0, 2, "0 2", 0.25 + 3),
                // three new in the first lesson are free; the fourth costs 4; two in the second are free
                new Case("four new, in one lesson", items("5 new2", "5 new2"), 2, 0, 1, "1", 4),
                new Case("three new, after the first", items("30", "8 new2", "8 new"), 2, 0, 2, "0 2", 1 + 4),
                new Case("three new, none allowed", items("30", "8 new2", "8 new"), 0, 0, 2, "0 2", 1 + 36),
                // the second stop is the homework's: half of 1
                new Case("homework saves a session", items("30", "10 home", "20"), 2, 10, 0, "0+1 2", 1 + 0.5),
                new Case("homework up to its minutes", items("30", "11 home", "15"), 2, 10, 2, "0 2", 4 * 36 + 1),
                new Case("homework at the end", items("30", "10 home"), 2, 10, 1, "0+1", 1),
                new Case("what may not go home", items("30", "10", "15"), 2, 10, 2, "0 2", 4 * 25 + 1));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void comesOutAsOnPaper(Case given) throws CannotPlan {
        PlanSettings settings = new PlanSettings(45, 10, given.mostNew(), given.homework());
        OptionalInt sessions = given.sessions() == 0 ? OptionalInt.empty() : OptionalInt.of(given.sessions());
        Plan plan = Planner.plan(PlanRequest.of(given.items(), settings, sessions));
        assertEquals(given.ends(), ends(plan));
        assertEquals(given.cost(), plan.cost(), 1e-9);
    }
}
