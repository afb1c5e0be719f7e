package roundwright.course.planning;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What an instruction between rounds has the hands do, where it takes time. The minutes are what a beginner needs once it has
 * been shown; no published figures were found for them, they are a teacher's estimate.
 */
enum Task {
    STUFF("stuffing", 5, false),
    PLACE("placing-features", 5, true),
    JOIN("joining-parts", 8, false),
    SEW("sewing-on", 10, true),
    CLOSE("closing-the-last-round", 4, false);

    private final String technique;
    private final double minutes;
    private final boolean homework;

    Task(String technique, double minutes, boolean homework) {
        this.technique = technique;
        this.minutes = minutes;
        this.homework = homework;
    }

    /** The tasks that ids of techniques name. */
    static Set<Task> of(Collection<String> techniques) {
        return Arrays.stream(values())
                .filter(task -> techniques.contains(task.technique))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Task.class)));
    }

    double minutes() {
        return minutes;
    }

    /** Whether it may be done at home, once it has been taught. */
    boolean homework() {
        return homework;
    }
}
