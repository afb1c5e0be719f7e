package roundwright.notation;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A line as read from its words alone, before any sum: its tree may still hold choices.
 *
 * @param label the round numbers it is for
 * @param body what is to be done, in order
 * @param open the habits of writers that its tree leaves open
 * @param counts numbers that may be the count it states, the likeliest first
 * @param reference the rounds whose line it takes over, where it does
 * @param doubts stretches that stand among the stitches and were not understood
 * @param stitches whether it has stitches, or words that may be stitches
 * @param towardsUs how far its words speak for US terms; below nought for UK
 * @param hole whether a step is missing among its steps, which no sum can fill
 * @param said what it says of its own starting chain, where it does
 * @param rounds rounds that it is to be worked for, where its words and not its label say so; else 0
 * @param chain the chain that a piece begins with, as far as the line tells of it
 */
public record WrittenLine(
        String text,
        Optional<Label> label,
        List<Node> body,
        Set<Habit> open,
        List<Count> counts,
        Optional<Reference> reference,
        List<Span> doubts,
        Set<Feature> features,
        Set<StitchName> names,
        boolean stitches,
        int rounds,
        int towardsUs,
        Optional<Said> said,
        boolean hole,
        Chain chain) {
    public WrittenLine {
        body = List.copyOf(body);
        counts = List.copyOf(counts);
        doubts = List.copyOf(doubts);
    }

    /** A line that tells how the pattern is written, and has nothing to do. */
    public static WrittenLine telling(String text) {
        return new WrittenLine(
                text,
                Optional.empty(),
                List.of(),
                Set.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Set.of(),
                false,
                0,
                0,
                Optional.empty(),
                false,
                Chain.NONE);
    }

    /** The same line with other steps. */
    WrittenLine with(List<Node> steps) {
        return new WrittenLine(
                text,
                label,
                steps,
                OpenHabits.of(steps),
                counts,
                reference,
                doubts,
                features,
                names,
                stitches,
                rounds,
                towardsUs,
                said,
                hole,
                chain);
    }

    /** Whether the line only makes the chain that a piece begins with: "Ch 72, join, being careful not to twist". */
    public boolean founds() {
        return !stitches && chain.made() >= StartReader.SHORTEST_RING;
    }

    /**
     * A chain that is worked along, or joined into a ring and worked round.
     *
     * @param made its chains; 0 where the line makes none, or does not say clearly how many
     * @param from the chain, counted from the hook, that the line's first stitch goes into; 0 where it does not say
     */
    public record Chain(int made, int from) {
        static final Chain NONE = new Chain(0, 0);
    }

    /** What the line says outright of how its writer means something: "ch 3 (counts as first tr)". */
    public record Said(Habit habit, int option) {}

    /** First and last round number of a line; the same for a single round. */
    public record Label(int first, int last, Span span) {}

    /**
     * A count that the line may be stating.
     *
     * @param soft whether it counts groups, which may not be the stitches ("8 shells")
     * @param sure whether it can only be a count; otherwise {@link Habit#NUMBER_AT_END} decides
     */
    public record Count(int value, Span span, boolean sure, boolean soft) {
        public Count(int value, Span span, boolean sure) {
            this(value, span, sure, false);
        }
    }

    /**
     * "Repeat round 4", "as rounds 3 and 4", "repeat last round 3 times". Numbers are 0 for "the last round".
     *
     * @param gap what is different between its increases or decreases, where it says that
     */
    public record Reference(int first, int last, int times, Span span, Optional<GapChange> gap) {}
}
