package roundwright.course.planning;

/**
 * What going wrong in an item costs: with some probability it costs minutes of pulling back and working again, sometimes few,
 * sometimes many (an exponential spread about the mean).
 *
 * @param probability that it goes wrong
 * @param minutes mean minutes lost where it does
 */
public record Setback(double probability, double minutes) {
    public static final Setback NONE = new Setback(0, 0);

    public Setback {
        if (!(probability >= 0 && probability <= 1 && minutes >= 0)) {
            throw new IllegalArgumentException("no setback of " + minutes + " minutes with probability " + probability);
        }
    }
}
