package roundwright.course;

import java.util.List;
import roundwright.pattern.Pattern;
import roundwright.technique.Technique;

/**
 * A course as its file says it: the pattern, split into lessons that introduce techniques.
 *
 * @param name the file's one heading
 * @param introduction the paragraphs below it
 * @param settings hook, yarn, tension, session, pace
 * @param pattern the parts, read and checked
 * @param lessons in order
 * @param ownTechniques techniques that the file defines for itself
 */
public record Course(
        String name,
        String introduction,
        CourseSettings settings,
        Pattern pattern,
        List<Lesson> lessons,
        List<Technique> ownTechniques) {
    public Course {
        lessons = List.copyOf(lessons);
        ownTechniques = List.copyOf(ownTechniques);
    }
}
