package roundwright.course.planning;

import java.util.Arrays;
import java.util.List;

/** Which sessions locked stretches allow: a session has a locked stretch whole and alone, or nothing of it. */
final class Locks {
    private final Stretch[] at;
    private final int[] coveredBefore;

    Locks(int items, List<Stretch> locked) {
        at = new Stretch[items];
        for (Stretch stretch : locked) {
            Arrays.fill(at, stretch.from(), stretch.last() + 1, stretch);
        }
        coveredBefore = new int[items + 1];
        for (int i = 0; i < items; i++) {
            coveredBefore[i + 1] = coveredBefore[i] + (at[i] == null ? 0 : 1);
        }
    }

    /** Whether a session may have exactly these items in class. */
    boolean allowClass(int from, int to) {
        Stretch here = at[from];
        return here == null ? free(from, to) : here.from() == from && here.to() == to;
    }

    /** Whether a session whose class ends at {@code to} may have homework to {@code last} ({@code to} for none). */
    boolean allowHomework(int to, int last) {
        Stretch here = at[to];
        return here == null ? last == to || free(to + 1, last) : here.last() == last;
    }

    /** The longest homework a locked session has, whatever the planner would give. */
    int homeworkReach(int to, int reach) {
        return at[to] == null ? reach : at[to].last();
    }

    private boolean free(int from, int to) {
        return coveredBefore[to + 1] == coveredBefore[from];
    }
}
