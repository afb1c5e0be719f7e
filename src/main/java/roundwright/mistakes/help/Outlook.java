package roundwright.mistakes.help;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.group.RoundPlace;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Landing;
import roundwright.mistakes.story.WrittenRound;
import roundwright.wording.Wording;

/**
 * What a group will find hard in a round it has not worked yet.
 *
 * @param place the round
 * @param wrong P(a wrong count | the round below is right)
 * @param causes P(the kind happens and the count is wrong), the likeliest first
 */
public record Outlook(RoundPlace place, double wrong, List<Share> causes) {
    private static final Wording WORDS = Wording.of("mistakes");
    private static final int MOST_NAMED = 2;
    /** A kind behind fewer of the wrong counts is not warned of. */
    private static final double WORTH_A_WARNING = 0.2;

    public Outlook {
        causes = List.copyOf(causes);
    }

    /** A kind's part in the wrong counts. */
    public record Share(Kind kind, double probability) {}

    /** The outlook of a round by the rates of a story; empty where its line was not understood. */
    public static Optional<Outlook> of(PatternStory story, RoundPlace place) {
        return story.round(place.part(), place.round())
                .filter(round -> round.story().isPresent() && round.count().isPresent())
                .map(round -> {
                    int below = round.line().map(WrittenRound::takes).orElse(0);
                    return of(
                            place, round.story().get().at(below), round.count().getAsInt());
                });
    }

    private static Outlook of(RoundPlace place, Landing landing, int written) {
        Map<Kind, Double> shares = new EnumMap<>(Kind.class);
        double wrong = 0;
        for (int made = landing.from(); made < landing.to(); made++) {
            if (made != written) {
                wrong += landing.chance(made);
                landing.forEachOutcome(made, (code, chance) -> {
                    new Kinds(code).list().stream().distinct().forEach(kind -> shares.merge(kind, chance, Double::sum));
                    return true;
                });
            }
        }
        List<Share> causes = new ArrayList<>();
        shares.forEach((kind, chance) -> causes.add(new Share(kind, chance)));
        causes.sort(Comparator.comparingDouble(Share::probability).reversed());
        return new Outlook(place, wrong, causes);
    }

    /** How many of a group to expect with a wrong count, and what to warn of before they start. */
    public String words(int students, Sentences sentences) {
        List<String> warnings = causes.stream()
                .filter(share -> share.probability() > WORTH_A_WARNING * wrong)
                .limit(MOST_NAMED)
                .map(share -> sentences.habit(share.kind()))
                .toList();
        return WORDS.say(
                "outlook",
                place.part(),
                place.round(),
                Math.round(wrong * students),
                students,
                Wording.list(warnings),
                Sentences.percent(wrong));
    }
}
