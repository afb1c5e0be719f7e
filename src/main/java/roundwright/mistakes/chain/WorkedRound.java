package roundwright.mistakes.chain;

import java.util.Optional;
import java.util.OptionalInt;
import roundwright.mistakes.story.Story;
import roundwright.mistakes.story.WrittenRound;

/**
 * A round of a part with the story of how beginners work it.
 *
 * @param part name of the part
 * @param number the round's number in the part
 * @param count the count to reach, where it is known
 * @param story what any number of stitches below can become; empty where the line was not understood
 * @param line what the hands do, where something lies below; empty for a ring, a foundation, or a line not understood
 */
public record WorkedRound(
        String part, int number, OptionalInt count, Optional<Story> story, Optional<WrittenRound> line) {
    boolean hasCount(int made) {
        return count.isEmpty() || count.getAsInt() == made;
    }
}
