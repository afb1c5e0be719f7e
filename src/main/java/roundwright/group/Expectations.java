package roundwright.group;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;

/** What the pattern says of each round: the count to reach, and what comes before and after it in working order. */
public final class Expectations {
    private final Map<RoundPlace, Round> rounds = new LinkedHashMap<>();

    private Expectations() {}

    public static Expectations of(Pattern pattern) {
        Expectations expectations = new Expectations();
        for (Part part : pattern.parts()) {
            part.rounds()
                    .forEach(round ->
                            expectations.rounds.putIfAbsent(new RoundPlace(part.name(), round.number()), round));
        }
        return expectations;
    }

    /** Every round in working order. A number that a part gives twice is the first of the two. */
    public List<RoundPlace> places() {
        return List.copyOf(rounds.keySet());
    }

    public Optional<Round> round(RoundPlace place) {
        return Optional.ofNullable(rounds.get(place));
    }

    /** The count to reach; empty where the pattern has no such round or does not say. */
    public OptionalInt count(RoundPlace place) {
        return round(place).map(Round::count).orElse(OptionalInt.empty());
    }
}
