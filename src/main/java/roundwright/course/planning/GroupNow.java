package roundwright.course.planning;

import java.util.List;

/**
 * Where a running group is.
 *
 * @param done items of the plan that count as done; the rest is planned anew
 * @param sessionsHeld sessions of the course that have been
 * @param pace the pace to plan the rest by, stitches a minute
 * @param learners everyone in it
 */
public record GroupNow(int done, int sessionsHeld, double pace, List<Learner> learners) {
    /** Three of four are as far and as fast, or further and faster: most finish in class. */
    private static final double SHARE_LEFT_BELOW = 0.25;

    public GroupNow {
        learners = List.copyOf(learners);
    }

    /**
     * A group taken at the 25th percentile of its students' paces and of their places in the pattern.
     *
     * @param learners at least one
     */
    public static GroupNow of(List<Learner> learners, int sessionsHeld) {
        double[] places = learners.stream().mapToDouble(Learner::done).toArray();
        double[] paces = learners.stream().mapToDouble(Learner::pace).toArray();
        int done = (int) Math.floor(Quantiles.of(places, SHARE_LEFT_BELOW));
        return new GroupNow(done, sessionsHeld, Quantiles.of(paces, SHARE_LEFT_BELOW), learners);
    }
}
