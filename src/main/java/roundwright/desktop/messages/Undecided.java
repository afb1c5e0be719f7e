package roundwright.desktop.messages;

import java.util.Optional;
import roundwright.notation.Span;

/**
 * A passage that speaks of the work but gives no count that could be filed.
 *
 * @param why the word for the reason, as in the wording
 * @param student whose words they are, where that is known
 */
public record Undecided(String why, Optional<String> student, Span source) {}
