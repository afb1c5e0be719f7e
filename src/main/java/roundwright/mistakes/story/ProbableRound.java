package roundwright.mistakes.story;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.pattern.Steps;

/**
 * A round as it may have been worked when certain mistakes happened in it. A count tells how many of a mistake there were, never at which
 * stitch: they stand spread over the places where they can have happened.
 *
 * @param steps what the hands may have done
 * @param wrong places in it where a mistake stands
 */
public record ProbableRound(Steps steps, Set<Integer> wrong) {
    public ProbableRound {
        wrong = Set.copyOf(wrong);
    }

    /**
     * What is known of a round.
     *
     * @param written what its line has the hands do
     * @param neighbours what the lines before and after it have the hands do
     * @param below numbers of stitches that may have lain below it, the likeliest first
     * @param counts numbers of stitches that it may truly have, the likeliest first
     */
    public record Known(Steps written, List<Steps> neighbours, List<Integer> below, List<Integer> counts) {}

    /** The round with these mistakes in it; empty where they do not lead to any of its counts. */
    public static Optional<ProbableRound> of(Known known, Kinds kinds) {
        for (int count : known.counts()) {
            for (int below : known.below()) {
                Optional<ProbableRound> found = of(known, kinds, below, count);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<ProbableRound> of(Known known, Kinds kinds, int below, int count) {
        if (kinds.has(Kind.WRONG_LINE)) {
            Kinds rest = kinds.without(Kind.WRONG_LINE);
            return known.neighbours().stream()
                    .flatMap(line ->
                            of(new Known(line, List.of(), known.below(), known.counts()), rest, below, count).stream())
                    .map(ProbableRound::allWrong)
                    .findFirst();
        }
        Optional<HandsAtWork> misread = HandsAtWork.reading(known.written(), kinds);
        if (misread.isEmpty()) {
            return Optional.empty();
        }
        HandsAtWork hands = misread.get();
        return hands.slip(kinds) ? hands.end(kinds, below, count) : Optional.empty();
    }

    private ProbableRound allWrong() {
        Set<Integer> all = new HashSet<>();
        for (int step = 0; step < steps.list().size(); step++) {
            all.add(step);
        }
        return new ProbableRound(steps, all);
    }
}
