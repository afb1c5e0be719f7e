package roundwright.desktop.insight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.group.CountReport;
import roundwright.group.StudentId;

/**
 * What has been worked out of the students of one group. Of each the last two are kept, for the last may be of a count that does not
 * get to the disk.
 */
final class KnownInsights {
    private final Map<StudentId, LastTwo> students = new HashMap<>();

    /** What a student's reports say, with the number of the picture it was worked out by. */
    record Known(int picture, StudentInsights insights) {
        boolean isOf(List<CountReport> reports) {
            return insights.reports().equals(reports);
        }
    }

    private record LastTwo(Known last, Optional<Known> before) {
        LastTwo and(LastTwo later) {
            return new LastTwo(later.last, Optional.of(last));
        }

        Optional<Known> of(List<CountReport> reports) {
            return last.isOf(reports) ? Optional.of(last) : before.filter(known -> known.isOf(reports));
        }
    }

    void add(StudentId student, Known known) {
        students.merge(student, new LastTwo(known, Optional.empty()), LastTwo::and);
    }

    /** What is known of these reports, be it by an older picture of the group. */
    Optional<Known> of(StudentId student, List<CountReport> reports) {
        return Optional.ofNullable(students.get(student)).flatMap(two -> two.of(reports));
    }

    void clear() {
        students.clear();
    }
}
