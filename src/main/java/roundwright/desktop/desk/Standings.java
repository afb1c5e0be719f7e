package roundwright.desktop.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.Standing;
import roundwright.group.StudentId;

/** How the students stand, kept for as long as neither their reports nor the pattern change. */
final class Standings {
    private record Kept(Expectations expectations, List<CountReport> reports, Standing standing) {
        boolean holds(OpenCourse course, List<CountReport> now) {
            return expectations == course.expectations() && reports.equals(now);
        }
    }

    private final Map<StudentId, Kept> kept = new HashMap<>();

    Standing of(OpenCourse course, StudentId student, List<CountReport> reports) {
        Kept found = kept.get(student);
        if (found == null || !found.holds(course, reports)) {
            Standing standing = Standing.derivedFrom(course.expectations(), reports);
            found = new Kept(course.expectations(), reports, standing);
            kept.put(student, found);
        }
        return found.standing();
    }
}
