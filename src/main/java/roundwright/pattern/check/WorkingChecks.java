package roundwright.pattern.check;

import java.util.List;
import roundwright.notation.Feature;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Round;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.Verdict;

/** Whether hands can work what a round states: not too few stitches to go round, not more than the fabric bears, no absurd numbers. */
final class WorkingChecks {
    /** A ring of fewer has no hole and no way to go round it. */
    private static final int FEWEST = 3;

    /** A round of so many is wider than three metres in thick yarn. */
    private static final int MOST = 2000;

    /** A range of so many rounds is taller than a metre in any yarn. */
    private static final int LONGEST_RANGE = 300;

    /** A round so many times as wide as the one below is a ruffle; three times is still a petal. */
    private static final int RUFFLES = 4;

    /** A round so many times narrower than the one below gathers it. */
    private static final int GATHERS = 3;

    private static final int FEWEST_BELOW = 6;

    private final PatternChecks checks;

    WorkingChecks(PatternChecks checks) {
        this.checks = checks;
    }

    void check(Part part) {
        part.lines().forEach(this::numbers);
        if (Shape.flat(part)) {
            return;
        }
        List<Round> rounds = part.rounds();
        for (int i = 0; i < rounds.size(); i++) {
            boolean last = i == rounds.size() - 1;
            boolean lineEnds = last || rounds.get(i + 1).line() != rounds.get(i).line();
            if (lineEnds && understood(rounds.get(i).line())) {
                few(rounds.get(i), last);
                jump(rounds.get(i).line());
            }
        }
    }

    private static boolean understood(Line line) {
        return line.makes().isPresent() && line.verdict() != Verdict.DOES_NOT_ADD_UP;
    }

    private void numbers(Line line) {
        line.label()
                .filter(label -> label.rounds() > LONGEST_RANGE)
                .ifPresent(label -> checks.warning(line, "range-absurd", label.rounds()));
        if (line.makes().orElse(0) > MOST) {
            checks.warning(line, "count-absurd", line.makes().getAsInt());
        }
    }

    /** Of a last round nothing is said: one that closes a point is drawn together. */
    private void few(Round round, boolean last) {
        Line line = round.line();
        int makes = line.makes().orElse(FEWEST);
        if (!last && makes > 0 && makes < FEWEST && plain(line)) {
            checks.warning(line, "round-too-small", makes);
        }
    }

    /** Whether stitches are all that it makes: chains, loops and joins go other ways. */
    private static boolean plain(Line line) {
        return !Shape.has(line, Feature.RING_OF_CHAINS)
                && !Shape.has(line, Feature.FOUNDATION_CHAIN)
                && line.round().map(Steps::list).orElse(List.of()).stream()
                        .allMatch(step -> step.action() != Step.Action.CHAIN
                                && step.action() != Step.Action.GROUP
                                && step.loop() != Step.Loop.SPACE);
    }

    private void jump(Line line) {
        long below = line.available().orElse(0);
        long makes = line.makes().orElse(0);
        boolean whole = line.takes().orElse(0) == below;
        if (whole && below >= FEWEST_BELOW && makes >= RUFFLES * below && plain(line)) {
            checks.remark(line, "growth-ruffles", below, makes);
        } else if (whole && makes > 0 && below >= GATHERS * makes && makes >= FEWEST && plain(line)) {
            checks.remark(line, "shrinks-gathers", below, makes);
        }
    }
}
