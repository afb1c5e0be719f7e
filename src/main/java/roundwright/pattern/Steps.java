package roundwright.pattern;

import java.util.List;
import java.util.Optional;

/**
 * What a round has the hands do, its repeats written out.
 *
 * <p>{@code (dc, inc) x 6} is twelve steps that take 12 stitches and make 18, with a {@link RepeatedBlock} of two steps, six times.
 *
 * @param list the steps in working order
 * @param block the outermost, first bracketed repeat of two or more steps, where the line has one
 */
public record Steps(List<Step> list, Optional<RepeatedBlock> block) {
    public Steps {
        list = List.copyOf(list);
    }

    /** Stitches of the round below that the round uses. */
    public int takes() {
        return list.stream().mapToInt(Step::takes).sum();
    }

    /** Stitches the round has when it is done. */
    public int makes() {
        return list.stream().mapToInt(Step::makes).sum();
    }

    public boolean shapes() {
        return list.stream().anyMatch(step -> step.increases() || step.decreases());
    }
}
