package roundwright.mistakes.help;

import java.util.ArrayList;
import java.util.List;
import roundwright.mistakes.learning.BetaBelief;
import roundwright.mistakes.learning.LearnedRates;
import roundwright.mistakes.story.Kind;

/**
 * How surely a student does what a kind of mistake is about: 1 − its rate.
 *
 * @param technique id of the technique in the catalogue
 * @param kind the mistake that is looked at
 * @param value the likeliest share of times it goes right
 * @param low in nine cases of ten it is no less than this (and no more than {@code high}, each end missing one in twenty)
 * @param high the other end
 * @param missed expected number of times it went wrong
 * @param chances how often it was to be done
 */
public record Mastery(
        String technique, Kind kind, double value, double low, double high, double missed, double chances) {
    private static final double TAIL = 0.05;

    /** What one technique is judged by. */
    private record Judged(String technique, Kind kind) {}

    private static final List<Judged> JUDGED = List.of(
            new Judged("increase", Kind.INCREASE_MISSED),
            new Judged("decrease", Kind.DECREASE_MISSED),
            new Judged("double-crochet", Kind.SKIPPED),
            new Judged("double-crochet", Kind.WORKED_TWICE),
            new Judged("counting-stitches", Kind.MISCOUNTED),
            new Judged("stitch-marker", Kind.STOPPED_SHORT),
            new Judged("stitch-marker", Kind.RAN_PAST),
            new Judged("reading-a-line", Kind.REPEAT_SHORT),
            new Judged("reading-a-line", Kind.REPEAT_EXTRA));

    /** Every technique that the student had a chance at. */
    public static List<Mastery> of(LearnedRates learned) {
        List<Mastery> all = new ArrayList<>();
        for (Judged judged : JUDGED) {
            Kind kind = judged.kind();
            if (learned.seen().chances(kind) > 0) {
                BetaBelief rate = learned.beliefs().get(kind);
                all.add(new Mastery(
                        judged.technique(),
                        kind,
                        1 - rate.mean(),
                        1 - rate.quantile(1 - TAIL),
                        1 - rate.quantile(TAIL),
                        learned.seen().happenings(kind),
                        learned.seen().chances(kind)));
            }
        }
        return all;
    }
}
