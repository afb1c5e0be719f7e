package roundwright.pattern;

import java.util.List;
import java.util.Optional;

/**
 * A part of the piece, worked in one go.
 *
 * @param name as the pattern names it; unique in the pattern
 * @param lines every written line, in order, rounds and instructions and lines not understood
 * @param items the same as things to do: a range becomes as many rounds as it has
 */
public record Part(String name, List<Line> lines, List<PartItem> items) {
    public Part {
        lines = List.copyOf(lines);
        items = List.copyOf(items);
    }

    public List<Round> rounds() {
        return items.stream()
                .filter(Round.class::isInstance)
                .map(Round.class::cast)
                .toList();
    }

    public Optional<Round> round(int number) {
        return rounds().stream().filter(round -> round.number() == number).findFirst();
    }
}
