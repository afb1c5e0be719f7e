package roundwright.pattern;

import roundwright.notation.Habit;

/**
 * How words that can be read in more than one way were read.
 *
 * @param habit the way of writing in question
 * @param option which of its meanings was chosen
 * @param because what decided
 */
public record Decision(Habit habit, int option, Because because) {
    /** What decided between several readings. */
    public enum Because {
        /** Only this reading fits the round below and the stated count. */
        SUMS,
        /** The writer's other lines mean it so. */
        WRITER,
        /** Nothing in the pattern tells; the trade mostly means it so. */
        USAGE,
        /** Someone said so. */
        OVERRULED
    }
}
