package roundwright.group.messages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.notation.Span;

/**
 * Words that say something of the work but give no count that could be filed: the teacher decides.
 *
 * @param student whose words they are, where that is known
 * @param rounds the rounds they speak of, where they name any
 * @param count the number that is said: of an unfinished round, where the student stopped
 */
public record Unplaced(Reason reason, Optional<String> student, List<Integer> rounds, OptionalInt count, Span source)
        implements Finding {
    public Unplaced {
        rounds = List.copyOf(rounds);
    }

    /** Why there is no count. */
    public enum Reason {
        /** A number that looks like a count, of no round that is named. */
        NO_ROUND,
        /** A round that the pattern does not have. */
        UNKNOWN_ROUND,
        /** "So many off", without saying which way; "the same", without saying as what. */
        UNCLEAR,
        /** A count within a question: "if yes 19, if no 18". */
        ASKED,
        /** The round is still being worked. */
        UNFINISHED,
        /** Pulled back, without a new count. */
        PULLED_BACK,
        /** "All right so far": said of rounds without their counts. */
        ALL_RIGHT;

        /** The word for it in files and JSON. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
