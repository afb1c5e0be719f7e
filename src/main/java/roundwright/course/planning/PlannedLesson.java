package roundwright.course.planning;

import java.util.List;
import java.util.Optional;

/**
 * One lesson of a plan with what it comes to.
 *
 * @param number from 1, counted over the whole course
 * @param name its title, where it has one
 * @param locked planning anew leaves its stretch alone
 * @param stretch its items
 * @param minutes where they go
 * @param over minutes over the session's length; 0 where it fits
 * @param introduces ids of the techniques used first in it
 * @param cost what it adds to the cost of the split
 */
public record PlannedLesson(
        int number,
        Optional<String> name,
        boolean locked,
        Stretch stretch,
        SessionMinutes minutes,
        double over,
        List<String> introduces,
        SessionCost cost) {
    public PlannedLesson {
        introduces = List.copyOf(introduces);
    }
}
