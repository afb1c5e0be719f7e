package roundwright.course;

import java.util.List;
import java.util.Optional;
import roundwright.pattern.Pattern;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;

/**
 * A course as its file says it: the pattern, split into lessons that introduce techniques.
 *
 * @param name the file's one heading
 * @param introduction the paragraphs below it
 * @param settings hook, yarn, tension, session, pace
 * @param uses the pattern, read and checked, and where each technique comes first in it
 * @param lessons in order
 */
public record Course(String name, String introduction, CourseSettings settings, FirstUses uses, List<Lesson> lessons) {
    public Course {
        lessons = List.copyOf(lessons);
    }

    public Pattern pattern() {
        return uses.pattern();
    }

    /** The catalogue with the course's own techniques. */
    public Techniques techniques() {
        return uses.techniques();
    }

    public Optional<Lesson> lesson(int number) {
        return lessons.stream().filter(lesson -> lesson.number() == number).findFirst();
    }

    /** The first lesson in which a round is worked, in class or as homework. */
    public Optional<Lesson> lessonOf(String part, int round) {
        return lessons.stream()
                .filter(lesson -> lesson.rounds().stream().anyMatch(range -> range.contains(part, round))
                        || lesson.homework().stream().anyMatch(range -> range.contains(part, round)))
                .findFirst();
    }
}
