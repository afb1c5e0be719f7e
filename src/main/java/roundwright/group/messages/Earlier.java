package roundwright.group.messages;

import java.time.LocalDateTime;
import java.util.Optional;
import roundwright.notation.Span;

/**
 * A count that was said first of rounds for which another was said later.
 *
 * @param count stitches, of each of the rounds
 * @param at when the message was sent, where the text says
 * @param source where it stands in the text
 */
public record Earlier(int count, boolean pulledBack, Optional<LocalDateTime> at, Span source) {}
