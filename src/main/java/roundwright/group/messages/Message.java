package roundwright.group.messages;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Span;

/**
 * One message of a pasted text.
 *
 * @param sender the name it was sent under, as written; empty where none is given
 * @param at when it was sent, where a full date and time are given
 * @param body where its words stand in the text
 * @param quoted stretches of the body that repeat what others wrote
 */
record Message(Optional<String> sender, Optional<LocalDateTime> at, Span body, List<Span> quoted) {}
