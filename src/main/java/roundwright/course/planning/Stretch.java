package roundwright.course.planning;

/**
 * The items of one session, as places in the plan's items: {@code from … to} in class, {@code to + 1 … last} at home.
 *
 * @param from first item worked in class
 * @param to last item worked in class
 * @param last last item of the homework; {@code to} where there is none
 */
public record Stretch(int from, int to, int last) {
    public Stretch {
        if (from < 0 || to < from || last < to) {
            throw new IllegalArgumentException("no session from " + from + " to " + to + ", homework to " + last);
        }
    }

    public boolean hasHomework() {
        return last > to;
    }
}
