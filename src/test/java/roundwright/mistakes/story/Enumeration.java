package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/**
 * The story told once more, by brute force and from its wording alone: every way a round can go, one after another. Shares no
 * code with the program but the names of the kinds.
 */
public final class Enumeration {
    /** A count made and what went wrong, as sorted words. */
    public record Outcome(int made, List<String> kinds) {}

    private final Rates rates;
    private final int mostSlips;
    private final Map<Outcome, Double> found = new HashMap<>();

    private Enumeration(Rates rates, int mostSlips) {
        this.rates = rates;
        this.mostSlips = mostSlips;
    }

    /** P(made, kinds | below), leaving out ways with more slips than so many. */
    public static Map<Outcome, Double> of(
            Steps own, Optional<Steps> before, Optional<Steps> after, int below, Rates rates, int mostSlips) {
        Enumeration enumeration = new Enumeration(rates, mostSlips);
        List<Steps> others = new ArrayList<>();
        before.filter(other -> !numbers(other).equals(numbers(own))).ifPresent(others::add);
        after.filter(other -> !numbers(other).equals(numbers(own))).ifPresent(others::add);
        double wrong = others.isEmpty() ? 0 : rates.rate(Kind.WRONG_LINE);
        enumeration.line(own, below, 1 - wrong, List.of());
        for (Steps other : others) {
            enumeration.line(other, below, wrong / others.size(), List.of("wrong-line"));
        }
        return enumeration.found;
    }

    private static List<List<Integer>> numbers(Steps steps) {
        return steps.list().stream()
                .map(step -> List.of(step.takes(), step.makes()))
                .toList();
    }

    private void line(Steps line, int below, double chance, List<String> kinds) {
        List<int[]> written = new ArrayList<>();
        for (Step step : line.list()) {
            written.add(new int[] {step.takes(), step.makes()});
        }
        double left = chance;
        for (Map.Entry<String, List<int[]>> misread : misreadings(line, written).entrySet()) {
            double part = chance * rates.rate(Kind.of(misread.getKey()).orElseThrow());
            left -= part;
            habits(misread.getValue(), below, part, with(kinds, misread.getKey()));
        }
        habits(written, below, left, kinds);
    }

    private static Map<String, List<int[]>> misreadings(Steps line, List<int[]> written) {
        Map<String, List<int[]>> ways = new HashMap<>();
        int[] plain = {1, 1};
        int needs = line.takes();
        line.block().filter(block -> block.times() >= 2 && block.length() >= 2).ifPresent(block -> {
            List<int[]> head = written.subList(0, block.from());
            List<int[]> once = written.subList(block.from(), block.from() + block.length());
            List<int[]> tail = written.subList(block.end(), written.size());
            ways.put("repeat-short", joined(head, once, block.times() - 1, tail));
            ways.put("repeat-extra", joined(head, once, block.times() + 1, tail));
            List<int[]> single = joined(head, once, 1, List.of());
            while (single.stream().mapToInt(step -> step[0]).sum() < needs) {
                single.add(plain);
            }
            ways.put("repeat-once", single);
            if (once.stream().anyMatch(Enumeration::isPlain)) {
                ways.put("runs-long", joined(head, stretched(once, 1), block.times(), tail));
                ways.put("runs-short", joined(head, stretched(once, -1), block.times(), tail));
            }
        });
        if (written.stream().anyMatch(step -> step[0] >= 1 && step[1] > step[0] || step[1] >= 1 && step[0] > step[1])) {
            List<int[]> flat = new ArrayList<>();
            for (int stitch = 0; stitch < needs; stitch++) {
                flat.add(plain);
            }
            ways.put("shaping-left-out", flat);
        }
        return ways;
    }

    private static boolean isPlain(int[] step) {
        return step[0] == 1 && step[1] == 1;
    }

    private static List<int[]> joined(List<int[]> head, List<int[]> block, int times, List<int[]> tail) {
        List<int[]> all = new ArrayList<>(head);
        for (int time = 0; time < times; time++) {
            all.addAll(block);
        }
        all.addAll(tail);
        return all;
    }

    private static List<int[]> stretched(List<int[]> block, int by) {
        List<int[]> all = new ArrayList<>();
        int run = 0;
        for (int[] step : block) {
            if (isPlain(step)) {
                run++;
            } else {
                addRun(all, run, by);
                run = 0;
                all.add(step);
            }
        }
        addRun(all, run, by);
        return all;
    }

    private static void addRun(List<int[]> all, int run, int by) {
        for (int stitch = 0; run > 0 && stitch < run + by; stitch++) {
            all.add(new int[] {1, 1});
        }
    }

    private void habits(List<int[]> steps, int below, double chance, List<String> kinds) {
        work(steps, 0, 0, 0, below, true, chance * rates.toMarker(), kinds, 0);
        work(steps, 0, 0, 0, below, false, chance * (1 - rates.toMarker()), kinds, 0);
    }

    private void work(
            List<int[]> steps,
            int at,
            int used,
            int made,
            int below,
            boolean marker,
            double chance,
            List<String> kinds,
            int slips) {
        if (chance == 0 || slips > mostSlips) {
            return;
        }
        if (at == steps.size()) {
            finish(marker ? made + below - used : made, chance, kinds);
            return;
        }
        int takes = steps.get(at)[0];
        int makes = steps.get(at)[1];
        if (marker && takes >= 1 && used >= below) {
            finish(made, chance, kinds);
            return;
        }
        double right = 1;
        for (String slip : possible(takes, makes)) {
            double rate = rates.rate(Kind.of(slip).orElseThrow());
            right -= rate;
            int uses = slip.equals("skipped") ? takes + 1 : slip.equals("worked-twice") ? takes - 1 : 1;
            int adds = slip.endsWith("missed") ? 1 : makes;
            List<String> more = with(kinds, slip);
            if (marker && used + uses > below) {
                if (slips < mostSlips) {
                    finish(made + below - used, chance * rate, more);
                }
            } else {
                work(steps, at + 1, used + uses, made + adds, below, marker, chance * rate, more, slips + 1);
            }
        }
        if (marker && used + takes > below) {
            finish(made + below - used, chance * right, kinds);
        } else {
            work(steps, at + 1, used + takes, made + makes, below, marker, chance * right, kinds, slips);
        }
    }

    private static List<String> possible(int takes, int makes) {
        List<String> slips = new ArrayList<>();
        if (takes >= 1) {
            slips.add("skipped");
            slips.add("worked-twice");
        }
        if (takes >= 1 && makes > takes) {
            slips.add("increase-missed");
        }
        if (makes >= 1 && takes > makes) {
            slips.add("decrease-missed");
        }
        return slips;
    }

    private void finish(int made, double chance, List<String> kinds) {
        double[] weights = {4 / 7.0, 2 / 7.0, 1 / 7.0};
        double stopped = rates.rate(Kind.STOPPED_SHORT);
        double past = rates.rate(Kind.RAN_PAST);
        note(made, chance * (1 - stopped - past), kinds);
        for (int stitches = 1; stitches <= 3; stitches++) {
            note(Math.max(0, made - stitches), chance * stopped * weights[stitches - 1], with(kinds, "stopped-short"));
            note(made + stitches, chance * past * weights[stitches - 1], with(kinds, "ran-past"));
        }
    }

    private void note(int made, double chance, List<String> kinds) {
        found.merge(new Outcome(made, kinds), chance, Double::sum);
    }

    private static List<String> with(List<String> kinds, String more) {
        List<String> all = new ArrayList<>(kinds);
        all.add(more);
        all.sort(null);
        return all;
    }
}
