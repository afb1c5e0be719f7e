package roundwright.group;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A run of a course: the people who take it together.
 *
 * @param course the course they take
 * @param name what the teacher calls it: "Tuesday evenings"
 * @param start date of the first session, where one is set
 * @param place where they meet; may be empty
 */
public record Group(GroupId id, CourseId course, String name, Optional<LocalDate> start, String place) {
    public Group {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a group needs a name");
        }
    }

    public Group named(String other) {
        return new Group(id, course, other, start, place);
    }
}
