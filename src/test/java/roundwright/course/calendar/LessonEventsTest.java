package roundwright.course.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/** What a calendar says of each lesson. */
class LessonEventsTest {
    private static Course course() {
        CourseSettings settings = new CourseSettings(
                Optional.of("4 mm"),
                Optional.of("aran, 90 g cream"),
                Optional.empty(),
                90,
                OptionalDouble.empty(),
                List.of(new Lesson.Entry("notions", "scissors")));
        Lesson first = new Lesson(
                1,
                "Into the ring",
                List.of(new RoundRange("Tower", 1, 2), new RoundRange("Lantern", 1, 1)),
                List.of(),
                List.of("magic-ring", "double-crochet"),
                Optional.of(120),
                List.of(new Lesson.Entry("homework", "Tower 3"), new Lesson.Entry("caution", "rest your hands")));
        Lesson second = new Lesson(
                2,
                "",
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(new Lesson.Entry("bring", "stuffing")));
        FirstUses uses = FirstUses.of(new Pattern(Terms.US, List.of()), Techniques.catalogue());
        return new Course("Gull", "", settings, uses, List.of(first, second));
    }

    private static Meeting meeting(int lesson) {
        return new Meeting(lesson, ZonedDateTime.parse("2027-01-05T19:00Z[Europe/London]"), Duration.ofMinutes(90));
    }

    @Test
    void saysWhatIsWorkedNewAndToBring() {
        List<CourseEvent> events = LessonEvents.of(course(), List.of(meeting(1), meeting(2)), Optional.of("Net loft"));
        assertEquals("Gull, lesson 1: Into the ring", events.get(0).title());
        assertEquals("""
                Rounds: Tower 1-2, Lantern 1
                New: magic ring, single crochet
                At home afterwards: Tower 3
                Bring: a 4 mm hook; yarn (aran, 90 g cream); a stitch marker, and the work so far; scissors
                Take care: rest your hands""", events.get(0).details());
        assertEquals("Gull, lesson 2", events.get(1).title());
        assertEquals("Bring: stuffing", events.get(1).details());
        assertEquals(Optional.of("Net loft"), events.get(1).place());
    }

    @Test
    void lessonsHaveTheirOwnLength() {
        assertEquals(List.of(120, 90), LessonEvents.minutes(course()));
    }
}
