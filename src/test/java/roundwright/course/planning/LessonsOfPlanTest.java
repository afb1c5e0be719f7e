package roundwright.course.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import roundwright.course.Lesson;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;

/** A plan written into a course file. */
class LessonsOfPlanTest {
    private static final String COURSE = """
            # Little gull

            Some words on the gull.

            - terms: UK
            - hook: 3.5 mm
            - yarn: cotton, 60 g white
            - tension: 20 stitches and 22 rounds to 10 cm
            - session: 60 minutes
            - pace: 6 stitches a minute

            ## Part: Body

            - Rnd 1: 6 dc in magic ring. (6)
            - Rnd 2: inc x 6 (12)
            - Rnd 3: (dc, inc) x 6 (18)
            - Rnds 4-9: dc in each st around. (18)
            - Rnd 10: (dc, dec) x 6 (12)
            - Stuff the body.
            - Rnd 11: dec x 6 (6)
            - Fasten off and draw the opening closed.

            ## Wing notes

            Kept as it is.

            ## Lesson 1: Hatching

            - rounds: Body 1-2
            - bring: cotton
            - homework: read page 2
            - homework: Body 3
            - mystery: kept

            A paragraph below.

            ## Lesson 2: Body 4-6

            - rounds: Body 4-6
            - new: reading a chart
            - caution: rest your hands

            ## Lesson 3: The end

            - rounds: Body 7-11
            - recap: counting
            """;

    private static String written(OptionalInt sessions) throws CannotPlan {
        CourseFile file = CourseFile.read(COURSE);
        Plan plan = plan(file, sessions);
        return CourseEdits.of(file)
                .lessons(LessonsOfPlan.of(plan, file.course().lessons()))
                .text();
    }

    private static Plan plan(CourseFile file, OptionalInt sessions) throws CannotPlan {
        PlanItems items = PlanItems.of(file.course().uses(), 6);
        return Planner.plan(PlanRequest.of(items.items(), new PlanSettings(60, 6, 2, 0), sessions));
    }

    @Test
    void whatTheTeacherWroteStays() throws CannotPlan {
        String text = written(OptionalInt.of(3));
        assertTrue(text.startsWith(COURSE.substring(0, COURSE.indexOf("## Lesson 1"))), text);
        for (String line : List.of(
                "## Lesson 1: Hatching",
                "- bring: cotton",
                "- homework: read page 2",
                "- mystery: kept",
                "A paragraph below.",
                "- caution: rest your hands",
                "## Lesson 3: The end",
                "- recap: counting")) {
            assertTrue(text.contains(line + "\n"), line + " is gone from\n" + text);
        }
        assertTrue(text.contains("reading a chart"), text);
    }

    @Test
    void roundsTitlesAndHomeworkFollowThePlan() throws CannotPlan {
        String text = written(OptionalInt.of(3));
        CourseFile file = CourseFile.read(text);
        Plan plan = plan(file, OptionalInt.of(3));
        Plan read = WrittenLessons.plan(
                        plan.items(), plan.settings(), file.course().lessons())
                .orElseThrow();
        assertEquals(WorkedCases.ends(plan), WorkedCases.ends(read), text);
        assertTrue(!text.contains("- homework: Body 3"), text);
        Lesson second = file.course().lessons().get(1);
        assertEquals(ItemWords.written(second.rounds()), second.name());
    }

    @Test
    void wordsOfLessonsThatAreGoneGoToTheLast() throws CannotPlan {
        String text = written(OptionalInt.of(2));
        assertTrue(text.contains("- recap: counting\n"), text);
        assertTrue(text.contains("- caution: rest your hands\n"), text);
        assertEquals(2, CourseFile.read(text).course().lessons().size());
    }

    @Test
    void writingThePlanAgainChangesNothing() throws CannotPlan {
        String once = written(OptionalInt.of(5));
        CourseFile file = CourseFile.read(once);
        Plan plan = plan(file, OptionalInt.of(5));
        assertEquals(
                once,
                CourseEdits.of(file)
                        .lessons(LessonsOfPlan.of(plan, file.course().lessons()))
                        .text());
    }
}
