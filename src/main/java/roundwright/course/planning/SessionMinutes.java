package roundwright.course.planning;

/**
 * Where the minutes of a session go.
 *
 * @param fixed settling, recap, count and check, packing up
 * @param teaching what is new
 * @param working stitches, counting, instructions; without homework
 */
public record SessionMinutes(double fixed, double teaching, double working) {
    public double total() {
        return fixed + teaching + working;
    }
}
