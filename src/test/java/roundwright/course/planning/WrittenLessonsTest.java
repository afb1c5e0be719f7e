package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;

/** Lessons written into a course and seen as a plan again. */
class WrittenLessonsTest {
    private static final PlanSettings SETTINGS = new PlanSettings(90, 8, 2, 20);

    private static Lesson lesson(
            int number, List<RoundRange> rounds, List<RoundRange> homework, Lesson.Entry... words) {
        return new Lesson(number, "L" + number, rounds, homework, List.of(), Optional.empty(), List.of(words));
    }

    private static RoundRange rounds(int first, int last) {
        return new RoundRange("Part", first, last);
    }

    /** Rounds 1 to 8 with a stuffing after round 5 and a sewing at the end. */
    private static List<PlanItem> items() {
        List<PlanItem> items = new ArrayList<>();
        for (int number = 1; number <= 8; number++) {
            items.add(item(OptionalInt.of(number), Optional.empty()));
            if (number == 5) {
                items.add(item(OptionalInt.empty(), Optional.of("Stuff it.")));
            }
        }
        items.add(item(OptionalInt.empty(), Optional.of("Sew it on.")));
        return items;
    }

    private static PlanItem item(OptionalInt round, Optional<String> instruction) {
        return new PlanItem("Part", round, instruction, 10, 2, 0, 0, List.of(), false, 0, false, false, true);
    }

    private static String ends(Lesson... lessons) {
        return WrittenLessons.plan(items(), SETTINGS, List.of(lessons))
                .map(WorkedCases::ends)
                .orElse("none");
    }

    @Test
    void lessonsBeginAtTheirRounds() {
        assertEquals(
                "2 9", ends(lesson(1, List.of(rounds(1, 3)), List.of()), lesson(2, List.of(rounds(4, 8)), List.of())));
        assertEquals(
                "2+4 9",
                ends(
                        lesson(1, List.of(rounds(1, 3)), List.of(rounds(4, 5))),
                        lesson(2, List.of(rounds(6, 8)), List.of())));
    }

    @Test
    void instructionsGoWithTheRoundBeforeThem() {
        Lesson first = lesson(1, List.of(rounds(1, 5)), List.of());
        assertEquals("5 9", ends(first, lesson(2, List.of(rounds(6, 8)), List.of())));
        Lesson.Entry note = new Lesson.Entry("note", "begin with: Stuff it.");
        assertEquals("4 9", ends(first, lesson(2, List.of(rounds(6, 8)), List.of(), note)));
    }

    @Test
    void aLessonWithoutRoundsHasTheInstructionsThatAreLeft() {
        assertEquals("8 9", ends(lesson(1, List.of(rounds(1, 8)), List.of()), lesson(2, List.of(), List.of())));
    }

    @Test
    void roundsOfNoLessonGoWithTheLessonBefore() {
        assertEquals(
                "3 9", ends(lesson(1, List.of(rounds(2, 3)), List.of()), lesson(2, List.of(rounds(5, 6)), List.of())));
    }

    @Test
    void whatGoesBackIsLeftOut() {
        assertEquals(
                "9", ends(lesson(1, List.of(rounds(4, 8)), List.of()), lesson(2, List.of(rounds(1, 3)), List.of())));
        assertEquals("none", ends(lesson(1, List.of(), List.of())));
        assertEquals("none", ends());
    }

    @Test
    void whatAPlanWritesIsReadAsTheSamePlan() throws CannotPlan {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            List<PlanItem> items = distinct(Draws.items(random, 2 + random.nextInt(25)));
            Plan plan = Planner.plan(PlanRequest.of(items, Draws.settings(random), OptionalInt.empty()));
            List<Lesson> lessons = LessonsOfPlan.of(plan, List.of());
            Plan read = WrittenLessons.plan(items, plan.settings(), lessons).orElseThrow();
            assertEquals(WorkedCases.ends(plan), WorkedCases.ends(read), "seed " + seed + " " + lessons);
        }
    }

    /** The course begins with a round, and every instruction has its own words. */
    private static List<PlanItem> distinct(List<PlanItem> items) {
        List<PlanItem> named = new ArrayList<>();
        for (PlanItem item : items) {
            int at = named.size();
            boolean round = item.round().isPresent() || at == 0;
            named.add(new PlanItem(
                    "Part",
                    round ? OptionalInt.of(at + 1) : OptionalInt.empty(),
                    round ? Optional.empty() : Optional.of("Do thing " + at + "."),
                    item.stitches(),
                    item.working(),
                    item.counting(),
                    item.teaching(),
                    item.introduces(),
                    item.shaping(),
                    item.range(),
                    item.endsPart(),
                    item.prepares(),
                    item.homework()));
        }
        return named;
    }
}
