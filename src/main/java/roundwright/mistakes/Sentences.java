package roundwright.mistakes;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** Puts what was found into sentences, in the terms of the course. */
public final class Sentences {
    private static final Wording WORDS = Wording.of("mistakes");

    /** Less likely causes are not worth a reader's time. */
    private static final double WORTH_SAYING = 0.04;

    private static final int MOST_OTHERS = 3;
    private static final double ALMOST_SURE = 0.9;
    private static final double LIKELY = 0.5;

    private final Terms terms;

    public Sentences(Terms terms) {
        this.terms = terms;
    }

    /** What probably happened: "One stitch was probably worked twice (64 %). It could also be a missed decrease (19 %)." */
    public String causes(Explanation explanation, Finding finding) {
        if (!finding.explained()) {
            return WORDS.say("cannot-explain", reported(explanation), written(explanation));
        }
        List<Finding.Cause> causes = finding.causes();
        Finding.Cause first = causes.get(0);
        List<String> others = causes.stream()
                .skip(1)
                .limit(MOST_OTHERS)
                .filter(cause -> cause.probability() >= WORTH_SAYING)
                .map(cause -> WORDS.say("with-chance", noun(cause.kinds()), percent(cause.probability())))
                .toList();
        String sentence = first(explanation, first);
        return others.isEmpty() ? sentence : sentence + " " + WORDS.say("could-also-be", either(others));
    }

    /**
     * How the likeliest causes came by their percentages: the chance of the report, the part of it in which the cause leads to it,
     * and the one over the other.
     */
    public List<String> arithmetic(Finding finding) {
        double report = Math.exp(-finding.surprise());
        List<String> lines = new ArrayList<>();
        lines.add(WORDS.say("sum-report", finding.reported().orElse(0), fine(report)));
        finding.causes().stream()
                .limit(MOST_OTHERS + 1L)
                .filter(cause -> cause.probability() >= WORTH_SAYING)
                .map(cause -> WORDS.say(
                        "sum-cause",
                        noun(cause.kinds()),
                        fine(report * cause.probability()),
                        fine(report),
                        percent(cause.probability())))
                .forEach(lines::add);
        return lines;
    }

    /** A chance with three figures. */
    private static String fine(double chance) {
        BigDecimal percent = new BigDecimal(100 * chance).round(new MathContext(3));
        return WORDS.say("percent", percent.toPlainString());
    }

    private static int reported(Explanation explanation) {
        return explanation.report().count().orElse(0);
    }

    private static int written(Explanation explanation) {
        return explanation.written().orElse(0);
    }

    private String first(Explanation explanation, Finding.Cause cause) {
        String sure = WORDS.say("sure." + sureness(cause.probability()));
        String percent = percent(cause.probability());
        if (cause.kinds().none()) {
            return explanation.state() == State.OFF
                    ? WORDS.say("came-from-below", sure, percent)
                    : WORDS.say("went-right", sure, percent);
        }
        Map<Kind, Integer> counts = counts(cause.kinds());
        if (counts.size() > 1) {
            return WORDS.say("came-together", sure, nouns(counts), percent);
        }
        Map.Entry<Kind, Integer> only = counts.entrySet().iterator().next();
        String happened = WORDS.say(
                "happened." + only.getKey().word(), only.getValue(), number(only.getValue()), sure, plainStitch());
        return WORDS.say("sentence-with-chance", happened, percent);
    }

    private static String sureness(double chance) {
        return chance >= ALMOST_SURE ? "almost" : chance >= LIKELY ? "probably" : "perhaps";
    }

    /** What happened as a thing to name: "a missed decrease and a miscount". */
    public String noun(Kinds kinds) {
        return kinds.none() ? WORDS.say("nothing-wrong") : nouns(counts(kinds));
    }

    private String nouns(Map<Kind, Integer> counts) {
        return Wording.list(counts.entrySet().stream()
                .map(entry -> WORDS.say(
                        "noun." + entry.getKey().word(), entry.getValue(), number(entry.getValue()), plainStitch()))
                .toList());
    }

    /** A kind as something that keeps happening: "missing decreases". */
    public String habit(Kind kind) {
        return WORDS.say("habit." + kind.word(), plainStitch());
    }

    private String plainStitch() {
        return Stitch.DOUBLE_CROCHET.name(terms);
    }

    private static Map<Kind, Integer> counts(Kinds kinds) {
        return kinds.list().stream()
                .collect(Collectors.toMap(kind -> kind, kind -> 1, Integer::sum, LinkedHashMap::new));
    }

    private static String either(List<String> things) {
        List<String> first = new ArrayList<>(things.subList(0, things.size() - 1));
        String last = things.get(things.size() - 1);
        return first.isEmpty() ? last : WORDS.say("either", String.join(", ", first), last);
    }

    /** A small number in words, a larger one in digits. */
    public static String number(int number) {
        return number >= 1 && number <= 9 ? WORDS.say("number." + number) : Integer.toString(number);
    }

    /** A probability as whole percent; never 0 % or 100 %, of which nobody is sure. */
    public static String percent(double chance) {
        long percent = Math.round(100 * chance);
        return percent < 1
                ? WORDS.say("below-one-percent")
                : percent > 99 ? WORDS.say("over-99-percent") : WORDS.say("percent", percent);
    }
}
