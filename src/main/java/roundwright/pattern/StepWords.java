package roundwright.pattern;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import roundwright.notation.Node.Target;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** One step, so many times, in plain words. */
final class StepWords {
    private static final Wording WORDS = Wording.of("pattern");
    private static final int LARGEST_WORD = 12;
    private static final Pattern ORDINAL =
            Pattern.compile("(?i)\\b([1-9](?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth)\\b");

    private final Terms terms;
    private final boolean flat;
    private final String text;

    StepWords(Terms terms, boolean flat, String text) {
        this.terms = terms;
        this.flat = flat;
        this.text = text;
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

    /** The run's step as often as it is done; {@code all} where that is the whole round. */
    String say(Piece.Run run, boolean all) {
        Step step = run.step();
        if (!run.parts().isEmpty()) {
            return together(run);
        }
        return switch (step.action()) {
            case PLAIN, INCREASE -> worked(run, all);
            case DECREASE, INVISIBLE_DECREASE -> decrease(step, run.times());
            case SKIP -> run.times() == 1 ? WORDS.say("step.skip") : WORDS.say("step.skip-each", number(run.times()));
            case CHAIN ->
                run.target() == Target.FOUNDATION ? WORDS.say("step.foundation-counts") : chain(step, run.times());
            case JOIN -> WORDS.say("step.join");
            case INTO_RING -> into(run);
            case GROUP -> group(step, run.times(), all);
        };
    }

    private String worked(Piece.Run run, boolean all) {
        Step step = run.step();
        boolean placed = step.takes() == 0
                && (run.target() == Target.SPACE
                        || run.target() == Target.FOUNDATION
                        || run.target() == Target.ONE_CHAIN);
        if (placed) {
            return into(run);
        }
        return step.takes() == 0
                ? WORDS.say("step.same", number(run.times() * step.makes()), named(step, run.times() * step.makes()))
                : stitches(step, run.times(), all);
    }

    /** The stitch's name for so many of it: "one treble", "two trebles". */
    private String named(Step step, long many) {
        String name = step.action() == Step.Action.CHAIN
                ? Stitch.CHAIN.name(terms)
                : step.own().orElseGet(() -> step.stitch().name(terms));
        return many == 1 ? name : plural(name);
    }

    /** The trade says "eleven double crochet", but "eleven trebles". */
    private static String plural(String name) {
        if (name.endsWith("crochet") || name.endsWith("s")) {
            return name;
        }
        return name.endsWith("ch") ? name + "es" : name + "s";
    }

    private String stitches(Step step, long times, boolean all) {
        int many = step.action() == Step.Action.GROUP ? 1 : step.makes();
        String made = number(many);
        String stitch = named(step, many);
        String loop = WORDS.say("loop." + step.loop());
        if (step.loop() == Step.Loop.FRONT_POST || step.loop() == Step.Loop.BACK_POST) {
            return post(step, times, all);
        }
        if (all) {
            return flat
                    ? WORDS.say("step.plain-row", made, stitch, loop)
                    : WORDS.say("step.plain-all", made, stitch, loop);
        }
        return times == 1
                ? WORDS.say("step.plain", made, stitch, loop)
                : WORDS.say("step.plain-each", made, stitch, loop, number(times));
    }

    private String post(Step step, long times, boolean all) {
        String made = number(step.makes());
        String stitch = named(step, step.makes());
        String side = WORDS.say("post." + step.loop());
        if (all) {
            return WORDS.say("step.post-all", made, stitch, side);
        }
        return times == 1
                ? WORDS.say("step.post", made, stitch, side)
                : WORDS.say("step.post-each", made, stitch, side, number(times));
    }

    private String decrease(Step step, long times) {
        String takes = number(step.takes());
        if (step.action() == Step.Action.INVISIBLE_DECREASE) {
            return times == 1
                    ? WORDS.say("step.invisible", takes)
                    : WORDS.say("step.invisible-each", takes, times(times));
        }
        String loop = WORDS.say("loop." + step.loop());
        return times == 1
                ? WORDS.say("step.together", takes, named(step, 1), loop)
                : WORDS.say("step.together-each", takes, named(step, 1), loop, times(times));
    }

    /** Into a ring, a chain or a space: what is no stitch of the round below. */
    private String into(Piece.Run run) {
        Step step = run.step();
        long made = run.times() * step.makes();
        return switch (run.target()) {
            case SPACE ->
                step.makes() > 1 && run.times() > 1
                        ? WORDS.say(
                                "step.each-space", number(step.makes()), named(step, step.makes()), number(run.times()))
                        : WORDS.say("step.into-space", number(made), named(step, made));
            case FOUNDATION ->
                run.times() > 1
                        ? WORDS.say(
                                "step.each-chain", number(step.makes()), named(step, step.makes()), number(run.times()))
                        : WORDS.say("step.next-chain", number(made), named(step, made));
            case ONE_CHAIN -> {
                String which = ordinal(step);
                yield which.isEmpty()
                        ? WORDS.say("step.one-chain", number(made), named(step, made))
                        : WORDS.say("step.chain-from-hook", number(made), named(step, made), which);
            }
            default ->
                step.loop() == Step.Loop.SPACE
                        ? WORDS.say("step.into-space", number(made), named(step, made))
                        : WORDS.say("step.into", number(made), named(step, made));
        };
    }

    /** "second" where the step's words name the second chain from the hook; empty where they name none. */
    private String ordinal(Step step) {
        Matcher ordinal = ORDINAL.matcher(step.span().of(text));
        if (!ordinal.find()) {
            return "";
        }
        String word = ordinal.group(1).toLowerCase(Locale.ROOT);
        if (Character.isDigit(word.charAt(0))) {
            int number = word.charAt(0) - '0';
            return number >= 1 && number < 10 ? WORDS.say("ordinal." + number) : "";
        }
        return word;
    }

    private String group(Step step, long times, boolean all) {
        if (step.takes() == 0) {
            return WORDS.say("step.make", number(times), named(step, times));
        }
        if (all) {
            return stitches(step, times, true);
        }
        return times == 1
                ? WORDS.say("step.group", named(step, 1))
                : WORDS.say("step.group-each", named(step, 1), number(times));
    }

    /** Several stitches into one place: "into the next stitch work one treble, two chains, one treble". */
    private String together(Piece.Run run) {
        String parts = run.parts().stream().map(this::member).collect(Collectors.joining(WORDS.say("list.comma")));
        String each = number(run.times());
        boolean one = run.times() == 1;
        return switch (run.target()) {
            case SPACE -> one ? WORDS.say("together.space", parts) : WORDS.say("together.each-space", parts, each);
            case RING -> WORDS.say("together.ring", parts);
            default ->
                run.step().takes() == 0
                        ? WORDS.say("together.same", parts)
                        : one ? WORDS.say("together.next", parts) : WORDS.say("together.each", parts, each);
        };
    }

    private String member(Piece piece) {
        if (piece instanceof Piece.Run run) {
            long many = run.times() * Math.max(1, run.step().makes());
            return WORDS.say("together.member", number(many), named(run.step(), many));
        }
        Piece.Loop loop = (Piece.Loop) piece;
        List<String> body = loop.body().stream().map(this::member).toList();
        return WORDS.say("repeat.nested", String.join(WORDS.say("list.comma"), body), times(loop.times()));
    }

    private static String chain(Step step, long times) {
        if (!step.starts()) {
            return WORDS.say("step.chain", times, number(times));
        }
        String digits = step.own().orElse("").replaceAll("\\D", "");
        int chains = digits.isEmpty() || digits.length() > 4 ? 0 : Integer.parseInt(digits);
        String begin = chains == 0 ? WORDS.say("step.starting") : WORDS.say("step.starting-of", chains, number(chains));
        return step.makes() > 0
                ? WORDS.say("step.starting-chain", begin, chains)
                : WORDS.say("step.starting-chain-apart", begin, chains);
    }
}
