package roundwright.course.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.course.planning.ItemWords;
import roundwright.notation.Terms;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/** What a calendar says of the lessons of a course: what is worked, what is new, what to bring. */
public final class LessonEvents {
    private static final Wording WORDS = Wording.of("course");

    private LessonEvents() {}

    /** The lengths of a course's lessons, in minutes. */
    public static List<Integer> minutes(Course course) {
        return course.lessons().stream()
                .map(lesson -> lesson.minutes().orElse(course.settings().sessionMinutes()))
                .toList();
    }

    /**
     * One event for each lesson.
     *
     * @param meetings one for each lesson of the course, in order
     */
    public static List<CourseEvent> of(Course course, List<Meeting> meetings, Optional<String> place) {
        List<CourseEvent> events = new ArrayList<>();
        for (int i = 0; i < meetings.size(); i++) {
            Lesson lesson = course.lessons().get(i);
            events.add(new CourseEvent(meetings.get(i), title(course, lesson), details(course, lesson), place));
        }
        return events;
    }

    private static String title(Course course, Lesson lesson) {
        return lesson.name().isBlank()
                ? WORDS.say("dates-title", course.name(), lesson.number())
                : WORDS.say("dates-title-named", course.name(), lesson.number(), lesson.name());
    }

    private static String details(Course course, Lesson lesson) {
        Terms terms = course.pattern().terms();
        Techniques techniques = course.techniques();
        List<String> introduced = lesson.introduces().stream()
                .flatMap(id -> techniques.get(id).stream())
                .map(technique -> technique.name(terms))
                .toList();
        List<String> lines = new ArrayList<>();
        say(lines, "worked", ItemWords.written(lesson.rounds()));
        say(lines, "new", String.join(", ", introduced));
        say(lines, "homework", String.join("; ", lesson.words("homework")));
        say(lines, "bring", bring(course, lesson));
        say(lines, "caution", String.join("; ", lesson.words("caution")));
        return String.join("\n", lines);
    }

    private static void say(List<String> lines, String line, String text) {
        if (!text.isEmpty()) {
            lines.add(WORDS.say("dates-line." + line, text));
        }
    }

    /** What the lesson says, else what the course says, and hook and yarn. */
    private static String bring(Course course, Lesson lesson) {
        List<String> own = lesson.words("bring");
        if (!own.isEmpty()) {
            return String.join("; ", own);
        }
        Stream<String> general = course.settings().words().stream()
                .filter(entry -> entry.key().equals("bring") || entry.key().equals("notions"))
                .map(Lesson.Entry::value);
        Stream<String> tools = Stream.of(
                        course.settings().hook().map(hook -> WORDS.say("dates-hook", hook)),
                        course.settings().yarn().map(yarn -> WORDS.say("dates-yarn", yarn)),
                        Optional.of(WORDS.say("dates-work")))
                .flatMap(Optional::stream);
        return String.join("; ", Stream.concat(tools, general).toList());
    }
}
