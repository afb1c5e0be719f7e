package roundwright.desktop.desk;

import java.util.List;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.course.Lesson;

/** A round of the piece: {@code ("Tower", 13)}. */
public record Place(String part, int round) {
    /** All rounds of the course in working order. */
    public static List<Place> of(Course course) {
        return course.pattern().parts().stream()
                .flatMap(part -> part.rounds().stream().map(round -> new Place(part.name(), round.number())))
                .toList();
    }

    /** The lesson in whose class the round is worked. */
    public Optional<Lesson> lesson(Course course) {
        return course.lessons().stream().filter(this::in).findFirst();
    }

    private boolean in(Lesson lesson) {
        return lesson.rounds().stream().anyMatch(range -> range.contains(part, round));
    }
}
