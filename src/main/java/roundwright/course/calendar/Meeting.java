package roundwright.course.calendar;

import java.time.Duration;
import java.time.ZonedDateTime;

/**
 * One lesson of a run, in time.
 *
 * @param lesson number of the lesson
 * @param start by the clock of the place
 * @param length of the session
 */
public record Meeting(int lesson, ZonedDateTime start, Duration length) {
    public ZonedDateTime end() {
        return start.plus(length);
    }
}
