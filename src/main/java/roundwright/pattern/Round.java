package roundwright.pattern;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One round of a part. A written range ("Rnds 3-5") is as many rounds as it has.
 *
 * @param number its number in the part, from the line's label, or counted on where the line has none
 * @param line the line it is written in
 * @param steps what the hands do; empty where the line was not understood
 * @param count the count to reach; empty where it is neither stated nor can be worked out
 */
public record Round(int number, Line line, Optional<Steps> steps, OptionalInt count) implements PartItem {}
