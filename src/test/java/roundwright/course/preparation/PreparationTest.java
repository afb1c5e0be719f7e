package roundwright.course.preparation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;

/** What a teacher gets ready. */
class PreparationTest {
    private static final Course COURSE = CourseFile.read("""
                    # Gull

                    - terms: UK
                    - hook: 4 mm
                    - yarn: aran, cotton, 40 g cream, 10 g red
                    - tension: 18 stitches and 20 rounds to 10 cm

                    ## Part: Body

                    - Rnd 1: 6 dc in magic ring. (6)
                    - Rnd 2: inc x 6 (12)
                    - Rnds 3-6: dc in each st around. (12)
                    - Change to red.
                    - Rnd 7: dc in each st around. (12)
                    - Place the eyes between rounds 5 and 6.
                    - Stuff the body.
                    - Rnd 8: dec x 6 (6)
                    - Fasten off and draw the opening closed.

                    ## Part: Wing

                    - Rnd 1: 6 dc in magic ring. (6)
                    - Rnd 2: inc x 6 (12)
                    - Fasten off, leaving a long tail.
                    - Sew the wing on the body.
                    """).course();

    private static Plan plan(int lessons) throws CannotPlan {
        PlanItems items = PlanItems.of(COURSE.uses(), 8);
        return Planner.plan(PlanRequest.of(items.items(), new PlanSettings(90, 8, 2, 0), OptionalInt.of(lessons)));
    }

    private static String text(List<PrepLine> lines) {
        return lines.stream().map(line -> line.kind() + " " + line.text()).collect(Collectors.joining("\n"));
    }

    @Test
    void theWholeCourseNeedsYarnToolsAndNotions() throws CannotPlan {
        String text = text(Preparation.of(COURSE, plan(2)).wholeCourse());
        for (String words :
                List.of("m of cream yarn", "m of red yarn", "a 4 mm hook", "stuffing", "blunt needles", "under age")) {
            assertTrue(text.contains(words), words + " is not in\n" + text);
        }
    }

    @Test
    void eachLessonHasItsOwnThings() throws CannotPlan {
        Plan plan = plan(3);
        Preparation preparation = Preparation.of(COURSE, plan);
        String first = text(preparation.lesson(plan.lessons().get(0)));
        assertTrue(first.contains("SAMPLE a large sample of “magic ring”"), first);
        assertTrue(first.contains("closed rings"), first);
        assertTrue(first.contains("CAUTION Scissors"), first);
        assertFalse(first.contains("swallowed"), first);
        assertFalse(first.contains("red"), first);
        String last = text(
                preparation.lesson(plan.lessons().get(plan.lessonOf(plan.items().size() - 1))));
        assertTrue(last.contains("needles"), last);
        assertTrue(last.contains("a piece worked up to "), last);
    }

    @Test
    void smallPartsAndTheOrderOfStuffingAreMinded() throws CannotPlan {
        Plan plan = plan(1);
        String text = text(Preparation.of(COURSE, plan).lesson(plan.lessons().get(0)));
        assertTrue(text.contains("CAUTION Eyes, beads and buttons"), text);
        assertTrue(text.contains("rules for toys where you live"), text);
        assertTrue(text.contains("ORDER Place eyes"), text);
        assertTrue(text.contains("ORDER Stuff while"), text);
    }

    /** A ball of 432 stitches, six millimetres wide, takes about 24 metres with margin and tails. */
    @Test
    void yarnAgreesWithTheTradesExample() {
        StringBuilder ball =
                new StringBuilder("# Ball\n\n- terms: UK\n- tension: 16.7 stitches and 18 rounds to 10 cm\n\n");
        ball.append("## Part: Ball\n\n- Rnd 1: 6 dc in magic ring. (6)\n- Rnd 2: inc x 6 (12)\n");
        for (int round = 3; round <= 6; round++) {
            ball.append("- Rnd " + round + ": (" + (round - 2) + " dc, inc) x 6 (" + 6 * round + ")\n");
        }
        ball.append("- Rnds 7-12: dc in each st around. (36)\n");
        for (int round = 13; round <= 17; round++) {
            int between = 17 - round;
            ball.append("- Rnd " + round + ": (" + between + " dc, dec) x 6 (" + 6 * (18 - round) + ")\n");
        }
        Course course = CourseFile.read(ball.toString().replace("(0 dc, dec) x 6", "dec x 6"))
                .course();
        double metres = YarnUse.of(course).orElseThrow().metres().get("");
        assertEquals(24, metres, 1.5);
    }

    @Test
    void coloursAreTakenUpByTheirWords() {
        Colours colours = new Colours("aran, cotton, 50 g cream, about 30 g deep red and 10g gold");
        assertEquals(List.of("cream", "deep red", "gold"), colours.names());
        assertEquals(
                "gold", colours.takenUp("Join gold in any of the front loops").get());
        assertEquals(
                "deep red", colours.takenUp("Rnd 4: with deep red, dc around").get());
        assertTrue(colours.takenUp("Sew the cream band on.").isEmpty());
        assertTrue(colours.takenUp("Fasten off.").isEmpty());
    }
}
