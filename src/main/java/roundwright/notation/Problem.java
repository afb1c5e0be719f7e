package roundwright.notation;

import java.util.List;
import java.util.Optional;

/**
 * Something in a written text that a person should know of, at its place.
 *
 * @param severity how much it matters
 * @param key names the kind of problem, for programs; stable
 * @param span where in the text it was read from (one line, or a whole file: whoever hands it out says which)
 * @param message what is wrong, in a sentence
 * @param suggestions what to write instead of the whole text it was found in, the likeliest first; may be empty
 */
public record Problem(Severity severity, String key, Span span, String message, List<String> suggestions) {
    public Problem {
        suggestions = List.copyOf(suggestions);
    }

    public Optional<String> suggestion() {
        return suggestions.stream().findFirst();
    }

    public Problem moved(int by) {
        return new Problem(severity, key, span.moved(by), message, suggestions);
    }
}
