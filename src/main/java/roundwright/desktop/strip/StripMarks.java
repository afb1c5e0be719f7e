package roundwright.desktop.strip;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What lies on the piece.
 *
 * @param flags names of the techniques that come first in a column, by column
 * @param students names of the students who are at a column, by column; hidden names are left out by whoever makes this
 * @param troubles columns where many go wrong
 * @param lesson the lesson the group is in; 0 where there is none
 */
public record StripMarks(
        Map<Integer, List<String>> flags, Map<Integer, List<String>> students, Set<Integer> troubles, int lesson) {
    public static final StripMarks NONE = new StripMarks(Map.of(), Map.of(), Set.of(), 0);

    public StripMarks {
        flags = Map.copyOf(flags);
        students = Map.copyOf(students);
        troubles = Set.copyOf(troubles);
    }
}
