package roundwright.group.messages;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;

/** What a message is read against: the rounds and parts of the pattern, and the students of the group. */
record Known(
        Expectations expectations,
        Parts parts,
        NameFinder names,
        Map<Integer, List<RoundPlace>> byRound,
        Set<Integer> counts) {
    static Known of(Expectations expectations, List<String> students) {
        List<String> parts =
                expectations.places().stream().map(RoundPlace::part).distinct().toList();
        Map<Integer, List<RoundPlace>> byRound =
                expectations.places().stream().collect(Collectors.groupingBy(RoundPlace::round));
        Set<Integer> counts = expectations.places().stream()
                .flatMapToInt(place -> expectations.count(place).stream())
                .boxed()
                .collect(Collectors.toSet());
        return new Known(expectations, new Parts(parts), new NameFinder(students), byRound, counts);
    }

    /** Whether the pattern, or the part, has such a round. */
    boolean has(Optional<String> part, int round) {
        return !places(part, round).isEmpty();
    }

    boolean has(int round) {
        return has(Optional.empty(), round);
    }

    /** The count to reach; where the part is not known, that of the first part that has the round. */
    OptionalInt expected(Optional<String> part, int round) {
        return places(part, round).stream()
                .map(expectations::count)
                .filter(OptionalInt::isPresent)
                .findFirst()
                .orElse(OptionalInt.empty());
    }

    /** How far a count is from what the pattern says, in whichever part is nearest; empty where it says nothing. */
    OptionalInt distance(Optional<String> part, int round, int count) {
        return places(part, round).stream()
                .map(expectations::count)
                .filter(OptionalInt::isPresent)
                .map(expected -> Math.abs(count - expected.getAsInt()))
                .min(Comparator.naturalOrder())
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** Whether a count is so near that a number can be taken for it without a word saying so. */
    boolean near(Optional<String> part, int round, int count, int most) {
        OptionalInt distance = distance(part, round, count);
        return distance.isPresent() && distance.getAsInt() <= most;
    }

    /** Whether any round is to have this count. */
    boolean expects(int count) {
        return counts.contains(count);
    }

    /** A reading in the one part that has its rounds, where there is but one. */
    Reading onlyPart(Reading reading) {
        List<String> those = places(Optional.empty(), reading.from()).stream()
                .map(RoundPlace::part)
                .filter(part -> has(Optional.of(part), reading.to()))
                .distinct()
                .toList();
        return those.size() == 1 ? reading.ofPart(those.get(0)) : reading;
    }

    int lastRound() {
        return byRound.keySet().stream().max(Comparator.naturalOrder()).orElse(0);
    }

    private List<RoundPlace> places(Optional<String> part, int round) {
        List<RoundPlace> all = byRound.getOrDefault(round, List.of());
        if (part.isEmpty()) {
            return all;
        }
        List<String> those = parts.members(part.get());
        return all.stream().filter(place -> those.contains(place.part())).toList();
    }
}
