package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import roundwright.notation.Terms;

/**
 * A whole pattern: its parts in working order.
 *
 * @param terms the terms it is written in, given or found out
 */
public record Pattern(Terms terms, List<Part> parts) {
    public Pattern {
        parts = List.copyOf(parts);
    }

    public Optional<Part> part(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }
}
