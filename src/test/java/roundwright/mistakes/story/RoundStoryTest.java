package roundwright.mistakes.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.pattern.Steps;

/** Every outcome of a round against every way it can go, one after another. */
class RoundStoryTest {
    private record Case(String name, Steps own, Optional<Steps> before, Optional<Steps> after) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final Optional<Steps> NO_LINE = Optional.empty();

    private static List<Case> rounds() {
        Steps increases = Written.round("", "i", 5, "");
        Steps spread = Written.round("", "pi", 3, "");
        Steps narrow = Written.round("", "pd", 3, "");
        return List.of(
                new Case("plain alone", Written.plain(6), NO_LINE, NO_LINE),
                new Case("plain between shaping", Written.plain(6), Optional.of(spread), Optional.of(narrow)),
                new Case("increases", increases, Optional.of(Written.plain(5)), NO_LINE),
                new Case("increase last", spread, Optional.of(increases), Optional.of(Written.plain(6))),
                new Case("increase first", Written.round("", "ip", 3, ""), NO_LINE, Optional.of(narrow)),
                new Case("decrease last", narrow, NO_LINE, Optional.of(Written.plain(6))),
                new Case("decrease first", Written.round("", "dp", 3, ""), Optional.of(spread), NO_LINE),
                new Case("decreases", Written.round("", "d", 4, ""), Optional.of(narrow), NO_LINE),
                new Case("ends outside", Written.round("p", "ppi", 2, "i"), NO_LINE, Optional.of(spread)),
                new Case("two runs", Written.round("", "pipd", 2, "p"), NO_LINE, NO_LINE),
                new Case("three in one", Written.round("", "ptpi", 2, ""), Optional.of(spread), NO_LINE),
                new Case("three together", Written.round("", "pep", 2, "d"), NO_LINE, NO_LINE),
                new Case("chains and skips", Written.round("", "pcs", 3, "c"), NO_LINE, Optional.of(narrow)),
                new Case("the same again", Written.plain(6), Optional.of(Written.plain(6)), NO_LINE));
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void everyOutcomeHasTheChanceThatEnumerationGivesIt(Case round) {
        for (Rates rates : List.of(Rates.STORY, clumsy())) {
            for (int below = Math.max(0, round.own().takes() - 4);
                    below <= round.own().takes() + 4;
                    below++) {
                Map<Enumeration.Outcome, Double> expected =
                        Enumeration.of(round.own(), round.before(), round.after(), below, rates, 5);
                compare(
                        round.name() + " on " + below,
                        expected,
                        story(round, rates).at(below));
            }
        }
    }

    private static Rates clumsy() {
        return Rates.STORY
                .with(Kind.SKIPPED, 0.012)
                .with(Kind.INCREASE_MISSED, 0.08)
                .with(Kind.STOPPED_SHORT, 0.05)
                .withToMarker(0.6);
    }

    private static RoundStory story(Case round, Rates rates) {
        List<WrittenRound> neighbours = new ArrayList<>();
        round.before().map(WrittenRound::of).ifPresent(neighbours::add);
        round.after().map(WrittenRound::of).ifPresent(neighbours::add);
        return RoundStory.of(WrittenRound.of(round.own()), neighbours, rates);
    }

    private static void compare(String name, Map<Enumeration.Outcome, Double> expected, Landing landing) {
        Map<Enumeration.Outcome, Double> found = new HashMap<>();
        for (int made = landing.from(); made < landing.to(); made++) {
            Landing.Outcomes outcomes = landing.outcomes(made);
            for (int entry = 0; entry < outcomes.codes().length; entry++) {
                List<String> kinds = new Kinds(outcomes.codes()[entry])
                        .list().stream().map(Kind::word).toList();
                found.merge(new Enumeration.Outcome(made, kinds), outcomes.chances()[entry], Double::sum);
            }
            int count = made;
            double total = expected.entrySet().stream()
                    .filter(entry -> entry.getKey().made() == count)
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            assertEquals(total, landing.chance(made), 2e-5, name + " makes " + made);
        }
        expected.forEach((outcome, chance) ->
                assertEquals(chance, found.getOrDefault(outcome, 0.0), 3e-6, name + " " + outcome));
    }
}
