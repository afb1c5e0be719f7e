package roundwright.desktop.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.group.RoundPlace;
import roundwright.technique.FirstUses;
import roundwright.technique.Technique;

/**
 * What stands where in a course, worked out once: it is asked for at every key stroke.
 *
 * @param orders where each round stands in working order, from 0
 * @param lessons the first lesson in which each round is worked
 * @param introduced new techniques by the round in which, or just before which, they come
 */
record CourseIndex(
        Map<RoundPlace, Integer> orders, Map<RoundPlace, Lesson> lessons, Map<RoundPlace, List<Technique>> introduced) {
    static CourseIndex of(Course course, List<RoundPlace> places) {
        Map<RoundPlace, Integer> orders = new HashMap<>();
        Map<RoundPlace, Lesson> lessons = new HashMap<>();
        for (RoundPlace place : places) {
            orders.put(place, orders.size());
            course.lessonOf(place.part(), place.round()).ifPresent(lesson -> lessons.put(place, lesson));
        }
        return new CourseIndex(orders, lessons, introduced(course.uses()));
    }

    int order(RoundPlace place) {
        return orders.getOrDefault(place, -1);
    }

    Optional<Lesson> lesson(RoundPlace place) {
        return Optional.ofNullable(lessons.get(place));
    }

    /** What an instruction brings comes with the round after it in its part, or with the part's last. */
    private static Map<RoundPlace, List<Technique>> introduced(FirstUses uses) {
        Map<RoundPlace, List<Technique>> found = new LinkedHashMap<>();
        List<Technique> waiting = new ArrayList<>();
        Optional<RoundPlace> last = Optional.empty();
        for (FirstUses.Place item : uses.places()) {
            if (last.filter(place -> !place.part().equals(item.part())).isPresent()) {
                take(found, last.get(), waiting);
            }
            waiting.addAll(uses.newAt(item.order()));
            if (item.round().isPresent()) {
                last = Optional.of(new RoundPlace(item.part(), item.round().get()));
                take(found, last.get(), waiting);
            }
        }
        last.ifPresent(place -> take(found, place, waiting));
        return found;
    }

    private static void take(Map<RoundPlace, List<Technique>> found, RoundPlace place, List<Technique> waiting) {
        if (!waiting.isEmpty()) {
            found.computeIfAbsent(place, absent -> new ArrayList<>()).addAll(waiting);
            waiting.clear();
        }
    }
}
