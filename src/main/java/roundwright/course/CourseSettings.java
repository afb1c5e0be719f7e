package roundwright.course;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds for the whole course.
 *
 * @param hook as written: "4 mm"
 * @param yarn as written: "aran, cotton, 90 g cream, 30 g red"
 * @param tension stitches and rounds to 10 cm, where given
 * @param sessionMinutes length of a session in minutes
 * @param pace stitches a minute, where given
 * @param words what is said to people for the whole course, by key, in the file's order: notions, bring, caution, note
 */
public record CourseSettings(
        Optional<String> hook,
        Optional<String> yarn,
        Optional<Tension> tension,
        int sessionMinutes,
        OptionalDouble pace,
        List<Lesson.Entry> words) {
    /** Length of a session where the course does not say: the usual adult slot. */
    public static final int USUAL_SESSION_MINUTES = 90;

    /** Stitches and rounds to 10 cm of fabric (US: gauge). */
    public record Tension(double stitches, double rounds) {
        public Tension {
            if (!(stitches > 0 && rounds > 0)) {
                throw new IllegalArgumentException("no tension of " + stitches + " stitches and " + rounds + " rounds");
            }
        }
    }

    public CourseSettings {
        words = List.copyOf(words);
    }
}
