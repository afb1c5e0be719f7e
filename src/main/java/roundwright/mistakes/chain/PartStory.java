package roundwright.mistakes.chain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The rounds of a part in working order.
 *
 * @param name the part's name
 * @param rounds its rounds, numbered from {@code rounds.get(0).number()} on, perhaps with gaps
 * @param base the part on whose last round it starts; empty where it starts from nothing
 */
public record PartStory(String name, List<WorkedRound> rounds, Optional<PartStory> base) {
    public PartStory {
        rounds = List.copyOf(rounds);
    }

    /** Place of the round in the list. */
    public OptionalInt place(int number) {
        for (int place = 0; place < rounds.size(); place++) {
            if (rounds.get(place).number() == number) {
                return OptionalInt.of(place);
            }
        }
        return OptionalInt.empty();
    }
}
