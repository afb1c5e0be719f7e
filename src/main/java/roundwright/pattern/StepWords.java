package roundwright.pattern;

import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** One step, so many times, in plain words. */
final class StepWords {
    private static final Wording WORDS = Wording.of("pattern");
    private static final int LARGEST_WORD = 12;

    private final Terms terms;

    StepWords(Terms terms) {
        this.terms = terms;
    }

    static String number(long number) {
        return number <= LARGEST_WORD ? WORDS.say("number." + number) : Long.toString(number);
    }

    static String times(long times) {
        return switch ((int) times) {
            case 1 -> WORDS.say("times.1");
            case 2 -> WORDS.say("times.2");
            default -> WORDS.say("times.more", number(times));
        };
    }

    /** The step {@code times} times; {@code all} where that is the whole round. */
    String say(Step step, long times, boolean all) {
        String stitch = step.own().orElseGet(() -> name(step));
        String loop = WORDS.say("loop." + step.loop());
        return switch (step.action()) {
            case PLAIN, INCREASE -> step.takes() == 0 ? same(step, stitch) : stitches(step, stitch, loop, times, all);
            case DECREASE ->
                times == 1
                        ? WORDS.say("step.together", number(step.takes()), stitch, loop)
                        : WORDS.say("step.together-each", number(step.takes()), stitch, loop, times(times));
            case INVISIBLE_DECREASE ->
                times == 1
                        ? WORDS.say("step.invisible", number(step.takes()))
                        : WORDS.say("step.invisible-each", number(step.takes()), times(times));
            case SKIP -> times == 1 ? WORDS.say("step.skip") : WORDS.say("step.skip-each", number(times));
            case CHAIN -> chain(step, times);
            case JOIN -> WORDS.say("step.join");
            case INTO_RING ->
                WORDS.say(
                        step.loop() == Step.Loop.SPACE ? "step.into-space" : "step.into",
                        number(times * step.makes()),
                        stitch);
            case GROUP ->
                times == 1 ? WORDS.say("step.group", stitch) : WORDS.say("step.group-each", stitch, number(times));
        };
    }

    private String name(Step step) {
        return step.stitch() == Stitch.OTHER
                ? Stitch.OTHER.name(terms)
                : step.stitch().name(terms);
    }

    private static String same(Step step, String stitch) {
        return WORDS.say("step.same", number(step.makes()), stitch);
    }

    private static String stitches(Step step, String stitch, String loop, long times, boolean all) {
        String made = number(step.makes());
        if (all) {
            return WORDS.say("step.plain-all", made, stitch, loop);
        }
        return times == 1
                ? WORDS.say("step.plain", made, stitch, loop)
                : WORDS.say("step.plain-each", made, stitch, loop, number(times));
    }

    private static String chain(Step step, long times) {
        boolean starting = step.starts();
        if (starting) {
            return WORDS.say(step.makes() > 0 ? "step.starting-chain" : "step.starting-chain-apart");
        }
        return WORDS.say("step.chain", times, number(times));
    }
}
