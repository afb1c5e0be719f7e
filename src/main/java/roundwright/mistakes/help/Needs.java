package roundwright.mistakes.help;

import java.util.Comparator;
import java.util.List;
import roundwright.group.Student;

/**
 * A student who needs help, and why.
 *
 * @param student who
 * @param reasons at least one, the weightiest first
 */
public record Needs(Student student, List<Reason> reasons) {
    public Needs {
        reasons = reasons.stream()
                .sorted(Comparator.comparingDouble(Reason::weight).reversed())
                .toList();
    }

    /** How urgent it is: the sum of the reasons' weights. */
    public double urgency() {
        return reasons.stream().mapToDouble(Reason::weight).sum();
    }
}
