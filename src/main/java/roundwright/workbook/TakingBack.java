package roundwright.workbook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.group.CountReport;
import roundwright.group.Enrolment;
import roundwright.group.GroupId;
import roundwright.group.StudentId;
import roundwright.store.FiledReport;

/**
 * What undo writes. It is the step backwards, except that a report which was filed is not wiped out: it is marked as withdrawn,
 * and counts for nothing, so that the history stays true to what happened. Only with its student does a report go for good.
 */
final class TakingBack {
    private record Place(GroupId group, StudentId student) {}

    private final WorkbookView view;
    private final Instant now;
    private final List<Write<?>> backwards;
    private final Set<Place> leaving = new HashSet<>();
    private final Set<Long> going = new HashSet<>();

    private TakingBack(Step step, WorkbookView view, Instant now) {
        this.view = view;
        this.now = now;
        this.backwards = step.backwards();
        backwards.forEach(this::noteWhoLeaves);
    }

    static List<Write<?>> of(Step step, WorkbookView view, Instant now) {
        return new TakingBack(step, view, now).writes();
    }

    private void noteWhoLeaves(Write<?> write) {
        if (write.deletes() && write.before().orElseThrow() instanceof Enrolment enrolment) {
            leaving.add(new Place(enrolment.group(), enrolment.student()));
        }
        if (write.deletes() && write.before().orElseThrow() instanceof FiledReport filed) {
            going.add(filed.report().sequence());
        }
    }

    private List<Write<?>> writes() {
        List<Write<?>> writes = new ArrayList<>(withdrawnBefore());
        backwards.forEach(write -> writes.add(kindly(write)));
        return writes;
    }

    /** Reports withdrawn by earlier undoing that hang on a student who leaves. */
    private List<Write<?>> withdrawnBefore() {
        List<Write<?>> writes = new ArrayList<>();
        for (Place place : leaving) {
            for (CountReport report : Lookup.group(view, place.group()).reports(place.student())) {
                if (!going.contains(report.sequence())) {
                    writes.add(Write.delete(Kind.REPORT, new FiledReport(place.group(), report)));
                }
            }
        }
        return writes;
    }

    private Write<?> kindly(Write<?> write) {
        Optional<?> before = write.before();
        if (before.isPresent() && before.get() instanceof FiledReport filed && takesBack(write, filed)) {
            CountReport withdrawn = filed.report().withdrawn(Optional.of(now));
            return Write.replace(Kind.REPORT, filed, new FiledReport(filed.group(), withdrawn));
        }
        return write;
    }

    private boolean takesBack(Write<?> write, FiledReport filed) {
        if (write.deletes()) {
            return !leaving.contains(new Place(filed.group(), filed.report().student()));
        }
        return filed.report().stands()
                && write.after().orElseThrow() instanceof FiledReport after
                && !after.report().stands();
    }
}
