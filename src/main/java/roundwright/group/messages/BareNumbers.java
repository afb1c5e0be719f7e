package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Reads numbers that stand without the word "round": "9) 42, 10) 36" as rounds with their counts, "6, 12, 18" as one round after another. */
final class BareNumbers {
    /** A round and the place of its count among the numbers. */
    record Placed(int round, int index, double sureness) {}

    private static final int FEWEST_IN_SEQUENCE = 3;

    private final Known known;
    private final Optional<String> part;
    private final List<Integer> numbers;

    BareNumbers(Known known, Optional<String> part, List<Integer> numbers) {
        this.known = known;
        this.part = part;
        this.numbers = numbers;
    }

    /** Round, count, round, count from the first number on. */
    List<Placed> labelled(int mostAway) {
        List<Placed> placed = new ArrayList<>();
        int last = 0;
        for (int index = 0; index + 1 < numbers.size(); index += 2) {
            int round = numbers.get(index);
            if (round <= last || !known.near(part, round, numbers.get(index + 1), away(round, mostAway))) {
                return List.of();
            }
            placed.add(new Placed(round, index + 1, Sureness.BARE_LABELS));
            last = round;
        }
        return numbers.size() % 2 == 0 ? placed : List.of();
    }

    private int away(int round, int most) {
        return Math.max(most, known.expected(part, round).orElse(0) / 4);
    }

    /** A count, then label and count in turns: what follows "r5" in "r5 30, 6 36, 7 42". */
    List<Placed> labelledAfter(int round) {
        if (numbers.size() < 3 || numbers.size() % 2 == 0) {
            return List.of();
        }
        List<Placed> rest = new BareNumbers(known, part, numbers.subList(1, numbers.size())).labelled(4);
        if (rest.isEmpty() || rest.get(0).round() <= round || rest.get(0).round() > round + 3) {
            return List.of();
        }
        List<Placed> placed = new ArrayList<>(List.of(new Placed(round, 0, Sureness.PLAIN)));
        rest.forEach(other -> placed.add(new Placed(other.round(), other.index() + 1, other.sureness())));
        return placed;
    }

    /** One round after another from a given one; empty unless every number fits its round better than the first round's. */
    List<Placed> following(int first) {
        boolean fits = IntStream.range(1, numbers.size())
                .allMatch(index -> known.near(part, first + index, numbers.get(index), 3)
                        && !nearer(first, first + index, numbers.get(index)));
        return fits ? inTurn(first, Sureness.SEQUENCE) : List.of();
    }

    private boolean nearer(int round, int other, int count) {
        return known.distance(part, round, count).orElse(99)
                < known.distance(part, other, count).orElse(99);
    }

    /** One round after another from the first of the part, where that is what the numbers look like. */
    List<Placed> fromTheStart() {
        if (numbers.size() < FEWEST_IN_SEQUENCE) {
            return List.of();
        }
        boolean fits = IntStream.range(0, numbers.size())
                .allMatch(index -> known.near(part, index + 1, numbers.get(index), 2 + index));
        return fits ? inTurn(1, Sureness.SEQUENCE) : List.of();
    }

    private List<Placed> inTurn(int first, double sureness) {
        return IntStream.range(0, numbers.size())
                .mapToObj(
                        index -> new Placed(first + index, index, index == 0 && first > 1 ? Sureness.PLAIN : sureness))
                .toList();
    }
}
