package roundwright.course;

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
 */
public record CourseSettings(
        Optional<String> hook,
        Optional<String> yarn,
        Optional<Tension> tension,
        int sessionMinutes,
        OptionalDouble pace) {
    /** Length of a session where the course does not say: the usual adult slot. */
    public static final int USUAL_SESSION_MINUTES = 90;

    /** Stitches and rounds to 10 cm of fabric (US: gauge). */
    public record Tension(double stitches, double rounds) {}
}
