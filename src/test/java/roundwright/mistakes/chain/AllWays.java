package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.mistakes.story.Enumeration;
import roundwright.mistakes.story.Enumeration.Outcome;
import roundwright.mistakes.story.Rates;
import roundwright.pattern.Steps;

/**
 * A student's way through the first rounds of a part by brute force: every sequence of true counts, with its chance and the
 * chance of what was seen. Shares no code with the program.
 */
final class AllWays {
    /** What was seen of a round: a count, and answers as pairs of check and answer. */
    record Sight(OptionalInt count, Map<String, String> answers) {}

    private final int ring;
    private final List<Steps> rounds;
    private final Rates rates;
    private final List<Sight> sights;
    private final Map<List<Integer>, Map<Outcome, Double>> known = new HashMap<>();
    private static final Map<List<Object>, Map<Outcome, Double>> WORKED = new HashMap<>();

    final Map<List<String>, Double> kinds = new HashMap<>();
    final Map<Integer, Double> counts = new HashMap<>();
    final Map<Integer, Double> began = new HashMap<>();
    double total;

    /** All ways through as many rounds as were seen; kinds and counts are those of the round numbered {@code asked} from 1. */
    AllWays(int ring, List<Steps> rounds, Rates rates, List<Sight> sights, int asked) {
        this.ring = ring;
        this.rounds = rounds;
        this.rates = rates;
        this.sights = sights;
        go(1, 0, 1, 0, asked, List.of(), -1);
        kinds.replaceAll((key, chance) -> chance / total);
        counts.replaceAll((key, chance) -> chance / total);
        began.replaceAll((key, chance) -> chance / total);
    }

    private void go(int round, int below, double chance, int off, int asked, List<String> what, int count) {
        if (chance < 1e-10) {
            return;
        }
        if (round > sights.size()) {
            total += chance;
            kinds.merge(what, chance, Double::sum);
            counts.merge(count, chance, Double::sum);
            began.merge(off, chance, Double::sum);
            return;
        }
        int written = round == 1 ? ring : rounds.get(round - 2).makes();
        if (round != asked) {
            Map<Integer, Double> made = new HashMap<>();
            seen(round, below).forEach((outcome, part) -> made.merge(outcome.made(), part, Double::sum));
            made.forEach((stitches, part) -> go(
                    round + 1,
                    stitches,
                    chance * part,
                    off == 0 && stitches != written ? round : off,
                    asked,
                    what,
                    count));
            return;
        }
        seen(round, below)
                .forEach((outcome, part) -> go(
                        round + 1,
                        outcome.made(),
                        chance * part,
                        off == 0 && outcome.made() != written ? round : off,
                        asked,
                        outcome.kinds(),
                        outcome.made()));
    }

    /** What may become of a round, a miscount among the kinds, with the chance of that and of what was seen. */
    private Map<Outcome, Double> seen(int round, int below) {
        return known.computeIfAbsent(List.of(round, below), key -> {
            Map<Outcome, Double> seen = new HashMap<>();
            worked(round, below).forEach((outcome, part) -> {
                Sight sight = sights.get(round - 1);
                double chance = part * report(sight.count(), outcome.made());
                List<String> all = new ArrayList<>(outcome.kinds());
                if (sight.count().isPresent() && sight.count().getAsInt() != outcome.made()) {
                    all.add("miscounted");
                    all.sort(null);
                }
                for (Map.Entry<String, String> answer : sight.answers().entrySet()) {
                    chance *= answer(answer.getKey(), answer.getValue(), all);
                }
                if (chance > 0) {
                    seen.merge(new Outcome(outcome.made(), all), chance, Double::sum);
                }
            });
            return seen;
        });
    }

    private Map<Outcome, Double> worked(int round, int below) {
        if (round > 1) {
            return WORKED.computeIfAbsent(List.of(rounds, round, below), key -> enumerated(round, below));
        }
        double wrong = 0.03;
        return Map.of(
                new Outcome(ring, List.of()), 1 - wrong,
                new Outcome(ring - 1, List.of("wrong-start")), wrong * 3 / 8,
                new Outcome(ring + 1, List.of("wrong-start")), wrong * 3 / 8,
                new Outcome(ring - 2, List.of("wrong-start")), wrong / 8,
                new Outcome(ring + 2, List.of("wrong-start")), wrong / 8);
    }

    private Map<Outcome, Double> enumerated(int round, int below) {
        Map<Outcome, Double> all = Enumeration.of(
                rounds.get(round - 2),
                round > 2 ? Optional.of(rounds.get(round - 3)) : Optional.empty(),
                round - 1 < rounds.size() ? Optional.of(rounds.get(round - 1)) : Optional.empty(),
                below,
                rates,
                5);
        all.values().removeIf(chance -> chance < 1e-9);
        return all;
    }

    private static double report(OptionalInt reported, int made) {
        if (reported.isEmpty()) {
            return 1;
        }
        return switch (Math.abs(reported.getAsInt() - made)) {
            case 0 -> 0.96;
            case 1 -> 0.04 * 15 / 20 / 2;
            case 2 -> 0.04 * 3 / 20 / 2;
            case 10 -> 0.04 * 2 / 20 / 2;
            default -> 0;
        };
    }

    private static double answer(String check, String answer, List<String> kinds) {
        String truth = switch (check) {
            case "recount" -> kinds.contains("miscounted") ? "different" : "same";
            case "look-for-a-gap" -> kinds.contains("skipped") ? "yes" : "no";
            case "look-for-a-pair" -> kinds.contains("worked-twice") ? "yes" : "no";
            case "count-the-shapings" -> shapings(kinds);
            default -> throw new IllegalArgumentException(check);
        };
        double others = check.equals("count-the-shapings") ? 2 : 1;
        return answer.equals(truth) ? 0.9 : 0.1 / others;
    }

    private static String shapings(List<String> kinds) {
        boolean fewer = kinds.stream()
                .anyMatch(
                        List.of("increase-missed", "decrease-missed", "repeat-short", "repeat-once", "shaping-left-out")
                                ::contains);
        return fewer ? "fewer" : kinds.contains("repeat-extra") ? "more" : "as-written";
    }
}
