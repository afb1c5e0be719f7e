package roundwright.course.planning;

/**
 * What one session adds to the cost of a split, each as it is added up.
 *
 * @param over 4 × (minutes over the session)²
 * @param unused 0.25 × (minutes unused)²; 0 in the last session
 * @param introduced 4 × (new techniques too many)²
 * @param stop the price of stopping after the class's last item, 0 to 6
 * @param homework half the price of stopping after the homework's last item
 */
public record SessionCost(double over, double unused, double introduced, double stop, double homework) {
    public double total() {
        return over + unused + introduced + stop + homework;
    }
}
