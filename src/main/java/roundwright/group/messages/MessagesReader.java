package roundwright.group.messages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import roundwright.course.Course;
import roundwright.group.Expectations;

/**
 * Finds the counts in what students write: in one message, a chat export, an e-mail or a list.
 *
 * <p>{@code "rnds 5+6 done, 30 & 36"} is two readings, {@code "Round 9: got 41 instead of 42"} one, {@code "the hook is 4 mm"} none.
 * Every reading says how sure it is; a later one on the same student's same round stands in the place of the earlier.
 */
public final class MessagesReader {
    /** What may stand before a colon without being somebody's name. */
    private static final Pattern NO_NAME = Pattern.compile(
            "(?i)(r|rd|rds|rnd|rnds|row|rows|round|rounds|part|question|questions|q|ps|pps|p\\.s|note|nb|edit|update|re|fw|fwd|subject"
                    + "|total|counts?|my counts?|results?|today|tonight|yesterday|hi|hello|hey|dear|ok|so|here|mine|list|progress|lesson"
                    + "|session|week|homework|total|sts|stitches|hook|yarn|thanks|photo|attachment|sorry|yes|no|oh|well|also|all|first|last|next|up|the|my|our|for|from|in|on|after|and)\\b.*|.*\\d.*"
                    + "|.*\\b(rounds?|rnds?|rows?|stitches|sts|counts?)\\b.*");

    private static final Pattern A_NAME =
            Pattern.compile("\\p{Lu}[\\p{L}\\p{M}'’.-]*(?:(?:[ &+,]+|,? and )\\p{Lu}[\\p{L}\\p{M}'’.-]*){0,3}");

    private final Known known;

    /**
     * @param students names of the group as the teacher knows them; empty where they are not known, then names are taken as written
     */
    public MessagesReader(Course course, List<String> students) {
        this(Expectations.of(course.pattern()), students);
    }

    public MessagesReader(Expectations expectations, List<String> students) {
        this.known = Known.of(expectations, students);
    }

    /** Everything found, in the order of the text. */
    public List<Finding> read(String text) {
        List<Finding> findings = new ArrayList<>();
        Conversation conversation = new Conversation(known);
        for (Message message : ChatReader.read(text, this::person)) {
            findings.addAll(conversation.next(text, message));
        }
        return newestOnly(findings);
    }

    private boolean person(String name) {
        if (known.parts().find(name).isPresent() || NO_NAME.matcher(name).matches()) {
            return false;
        }
        if (Speaker.of(Optional.of(name), known.names()).teacher()) {
            return true;
        }
        return known.names().knowsNobody()
                ? A_NAME.matcher(name).matches()
                : !Speaker.of(Optional.of(name), known.names()).students().isEmpty();
    }

    private static List<Finding> newestOnly(List<Finding> findings) {
        List<Finding> kept = new ArrayList<>();
        Set<List<Object>> said = new HashSet<>();
        for (int index = findings.size() - 1; index >= 0; index--) {
            Finding finding = findings.get(index);
            if (!(finding instanceof Reading reading) || said.add(rounds(reading))) {
                kept.add(finding);
            }
        }
        kept.sort(Comparator.comparingInt(finding -> finding.source().start()));
        return kept;
    }

    private static List<Object> rounds(Reading reading) {
        // without a student there is no telling whether two readings are one person's
        Object who = reading.student().<Object>map(name -> name).orElse(reading.source());
        return List.of(who, reading.part(), reading.from(), reading.to());
    }
}
