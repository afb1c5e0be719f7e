package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Span;
import roundwright.notation.Stitch;
import roundwright.pattern.RepeatedBlock;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/**
 * Writes rounds in letters for tests: {@code p} plain, {@code i} two in one, {@code t} three in one, {@code d} two together,
 * {@code e} three together, {@code s} a stitch passed over, {@code c} a chain.
 */
public final class Written {
    private Written() {}

    /** The steps of {@code before, (block) x times, after}. */
    public static Steps round(String before, String block, int times, String after) {
        String all = before + block.repeat(times) + after;
        Optional<RepeatedBlock> repeat = block.length() < 2 || times < 2
                ? Optional.empty()
                : Optional.of(new RepeatedBlock(before.length(), block.length(), times));
        List<Step> steps = new ArrayList<>();
        all.chars().forEach(letter -> steps.add(step((char) letter)));
        return new Steps(steps, repeat);
    }

    /** The steps of a round without a bracket. */
    public static Steps round(String letters) {
        return round(letters, "", 0, "");
    }

    public static Steps plain(int stitches) {
        return round("p".repeat(stitches));
    }

    private static Step step(char letter) {
        return switch (letter) {
            case 'p' -> step(Step.Action.PLAIN, 1, 1);
            case 'i' -> step(Step.Action.INCREASE, 1, 2);
            case 't' -> step(Step.Action.INCREASE, 1, 3);
            case 'd' -> step(Step.Action.DECREASE, 2, 1);
            case 'e' -> step(Step.Action.DECREASE, 3, 1);
            case 's' -> step(Step.Action.SKIP, 1, 0);
            case 'c' -> step(Step.Action.CHAIN, 0, 1);
            default -> throw new IllegalArgumentException("no step is written " + letter);
        };
    }

    private static Step step(Step.Action action, int takes, int makes) {
        return new Step(action, Stitch.DOUBLE_CROCHET, takes, makes, Step.Loop.BOTH, new Span(0, 0), Optional.empty());
    }
}
