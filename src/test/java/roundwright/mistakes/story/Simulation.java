package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import roundwright.mistakes.story.Enumeration.Outcome;
import roundwright.pattern.RepeatedBlock;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/**
 * The story acted out, one stitch at a time, by its wording alone and with its starting rates as numbers: for rounds too large to
 * enumerate. Shares no code with the program.
 */
final class Simulation {
    private final Random chance;
    private final List<Steps> lines;

    /** The line to work comes first; the others are its neighbours, with other steps. */
    Simulation(long seed, Steps own, List<Steps> neighbours) {
        this.chance = new Random(seed);
        this.lines = new ArrayList<>(List.of(own));
        lines.addAll(neighbours);
    }

    /** How often each outcome came in so many rounds worked on so many stitches. */
    Map<Outcome, Integer> work(int rounds, int below) {
        Map<Outcome, Integer> outcomes = new HashMap<>();
        for (int round = 0; round < rounds; round++) {
            outcomes.merge(one(below), 1, Integer::sum);
        }
        return outcomes;
    }

    private boolean happens(double rate) {
        return chance.nextDouble() < rate;
    }

    private Outcome one(int below) {
        List<String> kinds = new ArrayList<>();
        Steps line = lines.get(0);
        if (lines.size() > 1 && happens(0.008)) {
            kinds.add("wrong-line");
            line = lines.get(1 + chance.nextInt(lines.size() - 1));
        }
        int made = stitches(read(line, kinds), below, kinds);
        double end = chance.nextDouble();
        if (end < 0.024) {
            kinds.add(end < 0.012 ? "stopped-short" : "ran-past");
            int[] stitches = {1, 1, 1, 1, 2, 2, 3};
            int by = stitches[chance.nextInt(7)];
            made += end < 0.012 ? -by : by;
        }
        kinds.sort(null);
        return new Outcome(Math.max(0, made), kinds);
    }

    private List<Step> read(Steps line, List<String> kinds) {
        double which = chance.nextDouble();
        if (line.block().isPresent()) {
            boolean plain = inside(line).stream().anyMatch(Step::plain);
            String[] words = {"repeat-short", "repeat-extra", "repeat-once", "runs-long", "runs-short"};
            double[] rates = {0.008, 0.006, 0.004, plain ? 0.004 : 0, plain ? 0.004 : 0};
            for (int word = 0; word < words.length; word++) {
                which -= rates[word];
                if (which < 0) {
                    kinds.add(words[word]);
                    return misread(line, words[word]);
                }
            }
        }
        if (line.list().stream().anyMatch(step -> step.increases() || step.decreases()) && which < 0.006) {
            kinds.add("shaping-left-out");
            return Written.plain(line.takes()).list();
        }
        return line.list();
    }

    private static List<Step> inside(Steps line) {
        RepeatedBlock block = line.block().orElseThrow();
        return line.list().subList(block.from(), block.from() + block.length());
    }

    private static List<Step> misread(Steps line, String how) {
        RepeatedBlock block = line.block().orElseThrow();
        List<Step> worked = new ArrayList<>(line.list().subList(0, block.from()));
        int times = how.equals("repeat-short")
                ? block.times() - 1
                : how.equals("repeat-extra") ? block.times() + 1 : how.equals("repeat-once") ? 1 : block.times();
        for (int time = 0; time < times; time++) {
            List<Step> inside = inside(line);
            for (int step = 0; step < inside.size(); step++) {
                boolean runEnds = inside.get(step).plain()
                        && (step + 1 == inside.size() || !inside.get(step + 1).plain());
                if (!runEnds || !how.equals("runs-short")) {
                    worked.add(inside.get(step));
                }
                if (runEnds && how.equals("runs-long")) {
                    worked.add(inside.get(step));
                }
            }
        }
        if (how.equals("repeat-once")) {
            int used = worked.stream().mapToInt(Step::takes).sum();
            worked.addAll(Written.plain(Math.max(0, line.takes() - used)).list());
        } else {
            worked.addAll(line.list().subList(block.end(), line.list().size()));
        }
        return worked;
    }

    private int stitches(List<Step> steps, int below, List<String> kinds) {
        boolean marker = happens(0.85);
        int left = below;
        int made = 0;
        for (Step step : steps) {
            if (marker && step.takes() > 0 && left == 0) {
                return made;
            }
            int uses = step.takes();
            int makes = step.makes();
            double slip = step.takes() > 0 ? chance.nextDouble() : 1;
            if (slip < 0.004) {
                kinds.add("skipped");
                uses++;
            } else if (slip < 0.009) {
                kinds.add("worked-twice");
                uses--;
            } else if (step.increases() && slip < 0.039) {
                kinds.add("increase-missed");
                uses = 1;
                makes = 1;
            } else if (step.decreases() && slip < 0.049) {
                kinds.add("decrease-missed");
                uses = 1;
                makes = 1;
            }
            if (marker && uses > left) {
                return made + left;
            }
            left -= uses;
            made += makes;
        }
        return marker ? made + left : made;
    }
}
