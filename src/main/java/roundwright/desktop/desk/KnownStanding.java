package roundwright.desktop.desk;

import java.util.List;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.Standing;

/** How a student stands, and what that was worked out from. */
public record KnownStanding(Expectations expectations, List<CountReport> reports, Standing standing) {
    static KnownStanding of(OpenCourse course, List<CountReport> reports) {
        return new KnownStanding(course.expectations(), reports, Standing.derivedFrom(course.expectations(), reports));
    }

    boolean holds(OpenCourse course, List<CountReport> now) {
        return expectations == course.expectations() && (reports == now || reports.equals(now));
    }

    /** The same for reports that say the same: comparing them again is then done at once. */
    KnownStanding of(List<CountReport> same) {
        return reports == same ? this : new KnownStanding(expectations, same, standing);
    }
}
