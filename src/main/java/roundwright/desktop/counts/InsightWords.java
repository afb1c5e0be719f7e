package roundwright.desktop.counts;

import java.util.List;
import java.util.Locale;
import roundwright.desktop.insight.Insight;
import roundwright.mistakes.Advice;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.State;
import roundwright.mistakes.chain.Finding;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** An insight in the words of the card: causes with their shares, where it began, what can be done. */
final class InsightWords {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int MOST_CAUSES = 4;
    private static final double WORTH_SHOWING = 0.03;
    private static final double WORTH_A_LOOK = 0.5;

    private final Insight insight;
    private final Sentences sentences;

    InsightWords(Insight insight, Terms terms) {
        this.insight = insight;
        this.sentences = new Sentences(terms);
    }

    /** A cause and its share of 0 to 1. */
    record Cause(String words, double share) {
        String percent() {
            return WORDS.say("percent", Math.max(1, Math.min(99, Math.round(100 * share))));
        }
    }

    private Finding finding() {
        return insight.explanation().after();
    }

    /** Whether there is something to look at: the count is off, or something probably went wrong under a right count. */
    boolean worthALook() {
        Explanation explanation = insight.explanation();
        boolean wrongBelow = finding().causes().stream()
                .findFirst()
                .filter(cause -> !cause.kinds().none() && cause.probability() > WORTH_A_LOOK)
                .isPresent();
        return explanation.state() != State.RIGHT || wrongBelow;
    }

    /** The likeliest causes; empty where nothing explains the count. */
    List<Cause> causes() {
        return finding().causes().stream()
                .filter(cause -> cause.probability() >= WORTH_SHOWING)
                .limit(MOST_CAUSES)
                .map(cause -> new Cause(capital(words(cause)), cause.probability()))
                .toList();
    }

    private String words(Finding.Cause cause) {
        boolean off = insight.explanation().state() == State.OFF;
        return cause.kinds().none() && off ? WORDS.say("from-below") : sentences.noun(cause.kinds());
    }

    /** The sentence that says it all, for a count that nothing explains, or one that is right. */
    String sentence() {
        return sentences.causes(insight.explanation(), finding());
    }

    /** Where it most likely began, if not in this round itself. */
    String began() {
        return finding()
                .likeliestBegan()
                .filter(began -> began.round() != finding().round()
                        || !began.part().equals(finding().part()))
                .map(began -> WORDS.say("began", began.round(), Math.round(100 * began.probability())))
                .orElse("");
    }

    static String minutes(Advice.Choice choice) {
        double minutes = choice.minutes();
        return minutes < 1.5 ? WORDS.say("about-a-minute") : WORDS.say("about-minutes", Math.round(minutes));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }
}
