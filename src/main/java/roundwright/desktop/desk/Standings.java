package roundwright.desktop.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundwright.group.CountReport;
import roundwright.group.Standing;
import roundwright.group.StudentId;

/** How the students stand, kept for as long as neither their reports nor the pattern change. */
final class Standings {
    private final Map<StudentId, KnownStanding> kept = new HashMap<>();

    /** Takes what has been worked out elsewhere. */
    void take(Map<StudentId, KnownStanding> known) {
        kept.putAll(known);
    }

    Standing of(OpenCourse course, StudentId student, List<CountReport> reports) {
        KnownStanding found = kept.get(student);
        KnownStanding now =
                found != null && found.holds(course, reports) ? found.of(reports) : KnownStanding.of(course, reports);
        if (now != found) {
            kept.put(student, now);
        }
        return now.standing();
    }
}
