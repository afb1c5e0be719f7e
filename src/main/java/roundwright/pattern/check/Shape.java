package roundwright.pattern.check;

import java.util.List;
import java.util.OptionalInt;
import roundwright.notation.Feature;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Round;

/** How a part lies: in rounds or flat, and with how many stitches it ends. */
final class Shape {
    private Shape() {}

    /** Whether the part is worked to and fro: of such a piece nothing is known that holds for rounds. */
    static boolean flat(Part part) {
        return part.lines().stream().anyMatch(Shape::flat);
    }

    private static boolean flat(Line line) {
        boolean turned = has(line, Feature.TURNED) && !has(line, Feature.JOINED);
        boolean along = has(line, Feature.FOUNDATION_CHAIN) && !has(line, Feature.OVAL);
        return turned || along;
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
