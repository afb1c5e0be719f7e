package roundwright.pattern.chart;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.wording.Wording;

/** A round's chart told in words, a step at a time: "stitch 9 of 24: decrease over the next 2". */
public final class ChartWords {
    private static final Wording WORDS = Wording.of("pattern");

    private final RoundChart chart;
    private final Terms terms;

    public ChartWords(RoundChart chart, Terms terms) {
        this.chart = chart;
        this.terms = terms;
    }

    /** The signs of a round with their names in the key, in the order in which they come. */
    public static Map<String, Step> signs(Steps steps, Terms terms) {
        ChartWords words = new ChartWords(RoundChart.of(steps), terms);
        Map<String, Step> signs = new LinkedHashMap<>();
        steps.list().forEach(step -> signs.putIfAbsent(words.sign(step), step));
        return signs;
    }

    public String whole() {
        return chart.takes() == 0
                ? WORDS.say("chart-from-ring", chart.makes())
                : WORDS.say("chart-whole", chart.makes(), chart.takes());
    }

    /** One step: which stitches of the round it makes, and what is done. */
    public String step(int index) {
        List<Step> steps = chart.steps().list();
        int before = steps.subList(0, index).stream().mapToInt(Step::makes).sum();
        Step step = steps.get(index);
        String what = what(step);
        if (step.makes() == 0) {
            return WORDS.say("chart-step-none", what);
        }
        return step.makes() == 1
                ? WORDS.say("chart-step", before + 1, chart.makes(), what)
                : WORDS.say("chart-steps", before + 1, before + step.makes(), chart.makes(), what);
    }

    /** What the hands do in a step. */
    public String what(Step step) {
        String stitch = step.own().orElse(step.stitch().name(terms));
        String base = switch (step.action()) {
            case PLAIN -> WORDS.say("do-plain", stitch);
            case INCREASE -> WORDS.say("do-increase", step.makes(), stitch);
            case DECREASE -> WORDS.say("do-decrease", step.takes(), stitch);
            case INVISIBLE_DECREASE -> WORDS.say("do-invisible-decrease", step.takes());
            case SKIP -> WORDS.say("do-skip", step.takes());
            case CHAIN -> WORDS.say("do-chain", Math.max(1, step.makes()));
            case JOIN -> WORDS.say("do-join");
            case INTO_RING -> WORDS.say("do-into-ring", stitch);
            case GROUP -> WORDS.say("do-group", stitch);
        };
        return base + loop(step);
    }

    private static String loop(Step step) {
        return switch (step.loop()) {
            case BACK -> " " + WORDS.say("loop-back");
            case FRONT -> " " + WORDS.say("loop-front");
            case THIRD -> " " + WORDS.say("loop-third");
            case FRONT_POST -> " " + WORDS.say("post-front");
            case BACK_POST -> " " + WORDS.say("post-back");
            default -> "";
        };
    }

    /** The name of a sign in the key. */
    public String sign(Step step) {
        String stitch = step.own().orElse(step.stitch().name(terms));
        String name = switch (step.action()) {
            case INCREASE -> WORDS.say("sign-increase", step.makes());
            case DECREASE, INVISIBLE_DECREASE -> WORDS.say("sign-decrease", step.takes());
            case CHAIN -> Stitch.CHAIN.name(terms);
            case JOIN -> Stitch.SLIP_STITCH.name(terms);
            case SKIP -> WORDS.say("sign-skip");
            default -> stitch;
        };
        return name + loop(step);
    }
}
