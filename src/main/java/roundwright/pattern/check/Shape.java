package roundwright.pattern.check;

import java.util.List;
import java.util.OptionalInt;
import roundwright.notation.Feature;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Round;
import roundwright.pattern.WorkedAs;

/** How a part lies: in rounds or flat, and with how many stitches it ends. */
final class Shape {
    private Shape() {}

    /** Whether the part is worked to and fro: of such a piece nothing is known that holds for rounds. */
    static boolean flat(Part part) {
        return WorkedAs.of(part) == WorkedAs.ROWS;
    }

    static boolean has(Line line, Feature feature) {
        return line.features().contains(feature);
    }

    /** The count of the part's last round, where it is known. */
    static OptionalInt end(Part part) {
        List<Round> rounds = part.rounds();
        return rounds.isEmpty()
                ? OptionalInt.empty()
                : rounds.get(rounds.size() - 1).count();
    }
}
