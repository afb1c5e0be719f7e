package roundwright.pattern;

/** A line between rounds that has no stitches of its own: "Change to red.", "Stuff the tower firmly." */
public record Instruction(Line line) implements PartItem {}
