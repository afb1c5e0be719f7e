package roundwright.course.planning;

/**
 * One who takes the course, in the numbers that planning needs.
 *
 * @param name as they wish to be called
 * @param done items of the plan that they have done, from its beginning
 * @param pace stitches a minute
 */
public record Learner(String name, int done, double pace) {
    public Learner {
        if (done < 0 || !(pace > 0) || Double.isInfinite(pace)) {
            throw new IllegalArgumentException(name + " cannot have done " + done + " items at " + pace);
        }
    }
}
