package roundwright.mistakes.help;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.learning.BetaBelief;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Wording;

/**
 * A round where more of a group went wrong than beginners usually do.
 *
 * @param place the round
 * @param wrong students whose first count there was not what their own round below should have led to
 * @param counted students who reported it
 * @param usual the share that is to be expected of beginners
 * @param low the group's true share is not below this, in nineteen cases of twenty
 * @param high nor above this
 * @param kinds expected number of mistakes of each kind behind it, most first
 */
public record TroubleSpot(
        RoundPlace place,
        int wrong,
        int counted,
        double usual,
        double low,
        double high,
        List<Map.Entry<Kind, Double>> kinds) {
    private static final Wording WORDS = Wording.of("mistakes");
    private static final double TAIL = 0.05;

    /** A pattern has many rounds: each is held to a stricter measure than the interval that is shown. */
    private static final double SURELY = 0.01;

    /** A mistake that is expected less often than this in the whole group is not named. */
    private static final double NAMED = 0.5;

    public TroubleSpot {
        kinds = List.copyOf(kinds);
    }

    /** The rounds where the group is surely worse than usual, the clearest first. */
    static List<TroubleSpot> of(PatternStory usual, Map<StudentId, List<Explanation>> explanations) {
        Map<RoundPlace, List<Explanation>> first = new LinkedHashMap<>();
        explanations
                .values()
                .forEach(own -> firstOnEach(own)
                        .forEach((place, explanation) -> first.computeIfAbsent(place, key -> new ArrayList<>())
                                .add(explanation)));
        return first.entrySet().stream()
                .map(entry -> spot(usual, entry.getKey(), entry.getValue()))
                .filter(spot -> spot.share().quantile(SURELY) > spot.usual())
                .sorted(Comparator.comparingDouble((TroubleSpot spot) -> spot.usual() - spot.low()))
                .toList();
    }

    private static Map<RoundPlace, Explanation> firstOnEach(List<Explanation> own) {
        Map<RoundPlace, Explanation> first = new LinkedHashMap<>();
        own.stream()
                .filter(explanation -> explanation.report().count().isPresent())
                .forEach(explanation -> first.putIfAbsent(
                        new RoundPlace(
                                explanation.report().part(),
                                explanation.report().round()),
                        explanation));
        return first;
    }

    private static TroubleSpot spot(PatternStory usual, RoundPlace place, List<Explanation> counted) {
        int wrong = (int) counted.stream().filter(TroubleSpot::wentWrong).count();
        BetaBelief share = share(wrong, counted.size());
        return new TroubleSpot(
                place,
                wrong,
                counted.size(),
                usual(usual, place),
                share.quantile(TAIL),
                share.quantile(1 - TAIL),
                kinds(counted));
    }

    private static BetaBelief share(int wrong, int counted) {
        return new BetaBelief(wrong + 0.5, counted - wrong + 0.5);
    }

    private BetaBelief share() {
        return share(wrong, counted);
    }

    private static boolean wentWrong(Explanation explanation) {
        OptionalInt expected = explanation.soFar().expected();
        return expected.isPresent() && !explanation.report().count().equals(expected);
    }

    /** A wrong count comes of a wrong round, or of a right one that is miscounted. */
    private static double usual(PatternStory story, RoundPlace place) {
        double miscounted = Rates.STORY.rate(Kind.MISCOUNTED);
        return Outlook.of(story, place)
                .map(outlook -> outlook.wrong() + (1 - outlook.wrong()) * miscounted)
                .orElse(1.0);
    }

    private static List<Map.Entry<Kind, Double>> kinds(List<Explanation> counted) {
        Map<Kind, Double> sums = new HashMap<>();
        counted.stream()
                .filter(TroubleSpot::wentWrong)
                .flatMap(explanation -> explanation.after().causes().stream())
                .forEach(cause ->
                        cause.kinds().list().forEach(kind -> sums.merge(kind, cause.probability(), Double::sum)));
        return sums.entrySet().stream()
                .filter(entry -> entry.getValue() >= NAMED)
                .sorted(Map.Entry.<Kind, Double>comparingByValue().reversed())
                .map(entry -> Map.entry(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** "Tower 12: 7 of 12 went wrong, where 2 or 3 would be usual; mostly missing decreases." */
    public String words(Sentences sentences) {
        String numbers = WORDS.say(
                "trouble",
                place.part(),
                place.round(),
                wrong,
                counted,
                Math.round(usual * counted),
                Sentences.percent(low),
                Sentences.percent(high));
        return kinds.isEmpty()
                ? numbers
                : numbers + " "
                        + WORDS.say("trouble-kind", sentences.habit(kinds.get(0).getKey()));
    }
}
