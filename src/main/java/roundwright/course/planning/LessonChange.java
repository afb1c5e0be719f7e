package roundwright.course.planning;

import java.util.Optional;

/**
 * What planning anew changes in one lesson.
 *
 * @param number of the lesson
 * @param before what it was to do, as {@code Tower 4-6, Lantern 1}; empty where there was no such lesson
 * @param after what it is to do now; empty where there is none any more
 */
public record LessonChange(int number, Optional<String> before, Optional<String> after) {
    public boolean same() {
        return before.equals(after);
    }
}
