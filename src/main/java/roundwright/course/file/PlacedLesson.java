package roundwright.course.file;

import java.util.List;
import roundwright.course.Lesson;
import roundwright.notation.Span;

/** A lesson, the section it was read from, and where it names its new techniques. */
record PlacedLesson(Lesson lesson, Section section, List<PlacedTechnique> introduced) {
    /** Where the lesson says which rounds it has; its heading where it does not. */
    Span roundsSpan() {
        return section.setting("rounds")
                .map(setting -> setting.entry().written().span())
                .orElse(section.heading());
    }
}
