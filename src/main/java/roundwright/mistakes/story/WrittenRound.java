package roundwright.mistakes.story;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import roundwright.pattern.RepeatedBlock;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/**
 * A written round as the hands meet it: what each step takes and makes, and its bracketed repeat. Two rounds that have the
 * hands do the same are equal, whatever they are called.
 */
public final class WrittenRound {
    private final int[] takes;
    private final int[] makes;
    private final Optional<RepeatedBlock> block;
    private final int hash;

    private WrittenRound(int[] takes, int[] makes, Optional<RepeatedBlock> block) {
        this.takes = takes;
        this.makes = makes;
        this.block = block.filter(repeat -> repeat.length() >= 2 && repeat.times() >= 2);
        this.hash = 31 * Arrays.hashCode(takes) + Arrays.hashCode(makes);
    }

    /** The round of a line's steps. */
    public static WrittenRound of(Steps steps) {
        return new WrittenRound(
                steps.list().stream().mapToInt(Step::takes).toArray(),
                steps.list().stream().mapToInt(Step::makes).toArray(),
                steps.block());
    }

    /** A round without a bracket; both arrays have one entry a step and are not changed afterwards. */
    static WrittenRound ofSteps(int[] takes, int[] makes) {
        return new WrittenRound(takes, makes, Optional.empty());
    }

    int steps() {
        return takes.length;
    }

    int takes(int step) {
        return takes[step];
    }

    int makes(int step) {
        return makes[step];
    }

    boolean plain(int step) {
        return takes[step] == 1 && makes[step] == 1;
    }

    boolean increases(int step) {
        return takes[step] >= 1 && makes[step] > takes[step];
    }

    boolean decreases(int step) {
        return makes[step] >= 1 && takes[step] > makes[step];
    }

    /** The bracket of two or more steps, worked twice or more, where the line has one. */
    Optional<RepeatedBlock> block() {
        return block;
    }

    /** Stitches of the round below that it uses. */
    public int takes() {
        return Arrays.stream(takes).sum();
    }

    /** Stitches it makes. */
    public int makes() {
        return Arrays.stream(makes).sum();
    }

    /** What comes of so many stitches below when no mistake happens and the marker decides where the round ends. */
    public int workedOn(int below) {
        int used = 0;
        int made = 0;
        for (int step = 0; step < takes.length && used + takes[step] <= below; step++) {
            used += takes[step];
            made += makes[step];
        }
        return made + below - used;
    }

    /** Whether it has an increase or a decrease. */
    public boolean shapes() {
        return IntStream.range(0, takes.length).anyMatch(step -> increases(step) || decreases(step));
    }

    /**
     * How often a mistake that is counted so can happen in the round, worked on so many stitches.
     *
     * @param toMarker the chance that steps for which no stitch is left are not begun
     */
    public double opportunities(Kind.Per per, int below, double toMarker) {
        return switch (per) {
            case STEP -> begun(step -> takes[step] >= 1, below, toMarker);
            case INCREASE -> begun(this::increases, below, toMarker);
            case DECREASE -> begun(this::decreases, below, toMarker);
            case REPEAT -> block.isPresent() ? 1 : 0;
            case RUNS -> hasPlainInBlock() ? 1 : 0;
            case SHAPING -> shapes() ? 1 : 0;
            case ROUND -> 1;
            case PART, REPORT -> 0;
        };
    }

    private double begun(IntPredicate which, int below, double toMarker) {
        int used = 0;
        int all = 0;
        int begun = 0;
        for (int step = 0; step < takes.length; step++) {
            if (which.test(step)) {
                all++;
                begun += used < below ? 1 : 0;
            }
            used += takes[step];
        }
        return toMarker * begun + (1 - toMarker) * all;
    }

    /** The share of the round's shaping that is not worked where it is misread so. */
    public double shapingLost(Kind misreading) {
        return switch (misreading) {
            case SHAPING_LEFT_OUT -> 1;
            case REPEAT_ONCE -> block.map(repeat -> 1 - 1.0 / repeat.times()).orElse(0.0);
            default -> 0;
        };
    }

    /** Whether it has a bracket with a plain stitch in it. */
    boolean hasPlainInBlock() {
        return block.stream()
                .flatMapToInt(repeat -> IntStream.range(repeat.from(), repeat.from() + repeat.length()))
                .anyMatch(this::plain);
    }

    /** Whether a student who takes the other line for this one would do anything else. */
    boolean sameSteps(WrittenRound other) {
        return Arrays.equals(takes, other.takes) && Arrays.equals(makes, other.makes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WrittenRound round && sameSteps(round) && block.equals(round.block);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
