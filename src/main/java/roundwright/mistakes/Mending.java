package roundwright.mistakes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Round;
import roundwright.pattern.Step;
import roundwright.wording.Wording;

/**
 * Writes the next round so that it takes up a stitch or two too many or too few: one more decrease for each that is over, one
 * more increase for each that is missing, spread evenly and away from the round's own shaping.
 *
 * <p>On 25 stitches, for a plain round of 24: {@code Rnd 8: 11 dc, dec, 12 dc (24)}.
 */
final class Mending {
    private static final Wording WORDS = Wording.of("mistakes");

    private final Terms terms;
    private final Round round;

    Mending(Terms terms, Round round) {
        this.terms = terms;
        this.round = round;
    }

    /** The line that makes the round's own count of {@code over} more stitches below than it was written for, where one can be written. */
    Optional<String> line(int over) {
        return round.steps()
                .map(steps -> steps.list())
                .filter(Mending::simple)
                .flatMap(steps -> places(steps, over)
                        .map(places -> write(mended(steps, places, over)))
                        .filter(line -> readsRight(
                                line, steps.stream().mapToInt(Step::takes).sum() + over)));
    }

    /** Only plain stitches, increases and decreases in the same stitch can be written anew. */
    private static boolean simple(List<Step> steps) {
        return !steps.isEmpty()
                && steps.stream()
                        .allMatch(step -> step.stitch() == steps.get(0).stitch()
                                && step.loop() == Step.Loop.BOTH
                                && (step.plain() || pair(step)));
    }

    private static boolean pair(Step step) {
        return step.action() == Step.Action.INCREASE && step.takes() == 1 && step.makes() == 2
                || step.action() == Step.Action.DECREASE && step.takes() == 2 && step.makes() == 1
                || step.action() == Step.Action.INVISIBLE_DECREASE && step.takes() == 2 && step.makes() == 1;
    }

    /** Where the extra shaping goes: the middles of the longest stretches, nearest to even spacing; a missing stitch needs two plain ones. */
    private static Optional<List<Integer>> places(List<Step> steps, int over) {
        List<Integer> places = new ArrayList<>();
        int width = over > 0 ? 1 : 2;
        int wanted = Math.abs(over);
        for (int extra = 0; extra < wanted; extra++) {
            double ideal = (extra + 0.5) * steps.size() / wanted;
            IntStream.range(0, steps.size() - width + 1)
                    .filter(place -> IntStream.range(place, place + width)
                            .allMatch(step -> steps.get(step).plain()))
                    .filter(place -> places.stream().allMatch(other -> Math.abs(place - other) >= 2 * width))
                    .boxed()
                    .min((left, right) ->
                            Double.compare(unease(steps, left, width, ideal), unease(steps, right, width, ideal)))
                    .ifPresent(places::add);
        }
        return places.size() == wanted ? Optional.of(places) : Optional.empty();
    }

    /** Next to the round's own shaping is as bad as a third of the round away from the even place. */
    private static double unease(List<Step> steps, int place, int width, double ideal) {
        double off = Math.abs(place + width / 2.0 - ideal) / steps.size();
        int near = Integer.MAX_VALUE;
        for (int step = 0; step < steps.size(); step++) {
            if (!steps.get(step).plain()) {
                int away = step < place ? place - step : step - (place + width - 1);
                near = Math.min(near, away);
            }
        }
        return off + 1.0 / (3 * near);
    }

    private static List<String> mended(List<Step> steps, List<Integer> places, int over) {
        List<String> words = new ArrayList<>();
        for (int place = 0; place < steps.size(); place++) {
            if (places.contains(place)) {
                words.add(over > 0 ? "dec" : "inc");
                place += over > 0 ? 0 : 1;
            } else {
                words.add(word(steps.get(place)));
            }
        }
        return words;
    }

    private static String word(Step step) {
        return step.plain() ? "" : step.increases() ? "inc" : step.action() == Step.Action.DECREASE ? "dec" : "inv dec";
    }

    private String write(List<String> words) {
        String plain = round.steps().orElseThrow().list().get(0).stitch().written(terms);
        List<String> runs = new ArrayList<>();
        int from = 0;
        while (from < words.size()) {
            int to = from;
            while (to < words.size() && words.get(to).equals(words.get(from))) {
                to++;
            }
            runs.add(run(
                    words.get(from).isEmpty() ? plain : words.get(from),
                    to - from,
                    words.get(from).isEmpty()));
            from = to;
        }
        return WORDS.say(
                "mending-line",
                round.number(),
                String.join(", ", Repeats.folded(runs)),
                round.count().orElseThrow());
    }

    private static String run(String word, int times, boolean plain) {
        if (times == 1) {
            return word;
        }
        return plain ? times + " " + word : word + " x " + times;
    }

    /** A line is given only when the program itself reads it as what is meant. */
    private boolean readsRight(String line, int takes) {
        String plain = Stitch.DOUBLE_CROCHET.written(terms);
        String both = WORDS.say("mending-below", round.number() - 1, takes, plain) + "\n" + line;
        List<Line> lines = PatternReader.readBare(Optional.of(terms), both).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
        return lines.get(lines.size() - 1)
                .round()
                .filter(steps -> steps.takes() == takes)
                .filter(steps -> steps.makes() == round.count().orElseThrow())
                .isPresent();
    }
}
