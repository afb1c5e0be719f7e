package roundwright.pattern;

import roundwright.notation.Feature;

/** How a part is worked: round a ring, round both sides of a chain, or to and fro. */
public enum WorkedAs {
    ROUNDS,
    OVAL,
    ROWS;

    /** Told from what its lines have the hands do: a turn without a join, or a foundation chain that is worked along one side only, makes rows. */
    public static WorkedAs of(Part part) {
        if (part.lines().stream().anyMatch(WorkedAs::flat)) {
            return ROWS;
        }
        return part.lines().stream().anyMatch(line -> has(line, Feature.OVAL)) ? OVAL : ROUNDS;
    }

    private static boolean flat(Line line) {
        boolean turned = has(line, Feature.TURNED) && !has(line, Feature.JOINED);
        boolean along = has(line, Feature.FOUNDATION_CHAIN) && !has(line, Feature.OVAL);
        return turned || along;
    }

    private static boolean has(Line line, Feature feature) {
        return line.features().contains(feature);
    }
}
