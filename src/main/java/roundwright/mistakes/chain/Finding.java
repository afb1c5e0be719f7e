package roundwright.mistakes.chain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.RoundPlace;
import roundwright.mistakes.story.Kinds;

/**
 * What the reports say of one round as it was worked.
 *
 * @param part name of the part
 * @param round number of the round
 * @param reported the count that was reported, where one was
 * @param explained whether the story can explain the report; where it cannot, the round should be counted again
 * @param causes what went wrong, the likeliest first; empty where not explained
 * @param counts the true count of the round, the likeliest first
 * @param surprise −log P(this report | the reports before it), in nats; 0 where nothing was reported
 * @param expected what the round comes to when it is worked without a mistake on what most likely lies below
 * @param began where the piece may first have gone off, in working order
 * @param lastRight the newest round, this one or one below it, that by now most likely has the written count; empty where none has
 */
public record Finding(
        String part,
        int round,
        OptionalInt reported,
        boolean explained,
        List<Cause> causes,
        List<TrueCount> counts,
        double surprise,
        OptionalInt expected,
        List<Began> began,
        Optional<RoundPlace> lastRight) {
    public Finding {
        causes = List.copyOf(causes);
        counts = List.copyOf(counts);
        began = List.copyOf(began);
    }

    /** What may have gone wrong in a round, and how likely that is. */
    public record Cause(Kinds kinds, double probability) {}

    /** A count that the round may truly have, and how likely that is. */
    public record TrueCount(int count, double probability) {}

    /** The count that the round most likely has. */
    public int likeliest() {
        return counts.get(0).count();
    }

    /** The chance that the round truly has so many stitches. */
    public double chance(int count) {
        return counts.stream()
                .filter(each -> each.count() == count)
                .mapToDouble(TrueCount::probability)
                .sum();
    }

    /** The round where it most likely began, unless it is likelier that all is right. */
    public Optional<Began> likeliestBegan() {
        double off = began.stream().mapToDouble(Began::probability).sum();
        return began.stream()
                .max(Comparator.comparingDouble(Began::probability))
                .filter(most -> most.probability() > 1 - off);
    }
}
