package roundwright.pattern;

/** A thing to do in a part, in working order: a {@link Round} or an {@link Instruction} between rounds. */
public sealed interface PartItem permits Round, Instruction {
    /** The line it is written in; rounds of one written range share their line. */
    Line line();
}
