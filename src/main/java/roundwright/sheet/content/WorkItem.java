package roundwright.sheet.content;

import java.util.Optional;
import roundwright.pattern.Line;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;

/**
 * A thing to do in a lesson.
 *
 * @param part name of its part
 * @param item the round, or the instruction between rounds
 * @param again the round of which this one is the same, in a written range of several
 */
public record WorkItem(String part, PartItem item, Optional<Integer> again) {
    public Optional<Round> round() {
        return item instanceof Round round ? Optional.of(round) : Optional.empty();
    }

    public Line line() {
        return item.line();
    }
}
