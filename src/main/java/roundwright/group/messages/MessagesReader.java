package roundwright.group.messages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
                    + "|session|week|homework|total|sts|stitches|hook|yarn|thanks|photo|attachment|sorry|yes|no|oh|well|also|all|first|last|next|up|the|my|our|for|from|in|on|after|and|(mon|tues|wednes|thurs|fri|satur|sun)day|weekend|morning|evening|afternoon|night|good|great|hooray|yay|found|re[a-z]+ed|undid|un[a-z]+ed)\\b.*|.*\\d.*"
                    + "|.*\\b(rounds?|rnds?|rows?|stitches|sts|counts?)\\b.*");

    private static final Pattern A_NAME = Pattern.compile(
            "\\p{Lu}[\\p{L}\\p{M}'’.-]*(?:(?:[ &+,]+|,? and )\\p{Lu}[\\p{L}\\p{M}'’.-]*){0,3}(?: ?\\(\\p{L}+\\))?");

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
        Conversation conversation = new Conversation(known, PastedTable.in(text, known));
        for (Message message : ChatReader.read(text, people(text))) {
            findings.addAll(conversation.next(text, message));
        }
        return newestOnly(findings).stream().map(this::inOnlyPart).toList();
    }

    private Finding inOnlyPart(Finding finding) {
        boolean said = !(finding instanceof Reading reading) || reading.part().isPresent();
        return said ? finding : known.onlyPart((Reading) finding);
    }

    /** Who may stand before a colon: those of the group; where lines begin with them, others too, whose words are not theirs. */
    private Predicate<String> people(String text) {
        boolean list = !known.names().knowsNobody() && ChatReader.ledByNames(text, this::person) > 1;
        return list ? name -> person(name) || stranger(name) : this::person;
    }

    private boolean person(String name) {
        if (known.parts().names(name) || NO_NAME.matcher(name).matches()) {
            return false;
        }
        Speaker speaker = Speaker.of(Optional.of(name), known.names());
        return speaker.teacher()
                || (known.names().knowsNobody()
                        ? stranger(name)
                        : !speaker.students().isEmpty());
    }

    private boolean stranger(String name) {
        return A_NAME.matcher(name).matches()
                && !NO_NAME.matcher(name).matches()
                && !known.parts().names(name)
                && !Cues.saysSomething(Folding.fold(name.split("[\\s,&+]+")[0]))
                && !NumberWords.is(Folding.fold(name.split("[\\s,&+-]+")[0]));
    }

    /** Of readings of one student's same rounds the last, which keeps what was said before. */
    private static List<Finding> newestOnly(List<Finding> findings) {
        List<Finding> kept = new ArrayList<>();
        Map<List<Object>, Integer> said = new HashMap<>();
        for (Finding finding : findings) {
            Integer place = finding instanceof Reading reading ? said.get(rounds(reading)) : null;
            if (place != null && !((Reading) kept.get(place)).besides((Reading) finding)) {
                kept.set(place, replaced((Reading) kept.get(place), (Reading) finding));
            } else {
                if (finding instanceof Reading reading) {
                    said.put(rounds(reading), kept.size());
                }
                kept.add(finding);
            }
        }
        Map<List<Object>, Integer> counted = counted(kept);
        kept.removeIf(finding -> finding instanceof Unplaced unplaced && finishedSince(unplaced, counted));
        kept.sort(Comparator.comparingInt(finding -> finding.source().start()));
        return kept;
    }

    /** "Still on round 7" says nothing once the same student's count of it has come. */
    private static boolean finishedSince(Unplaced unplaced, Map<List<Object>, Integer> counted) {
        return unplaced.reason() == Unplaced.Reason.UNFINISHED
                && unplaced.student().isPresent()
                && !unplaced.rounds().isEmpty()
                && unplaced.rounds().stream()
                        .allMatch(round -> counted.getOrDefault(List.of(unplaced.student(), round), 0)
                                > unplaced.source().start());
    }

    /** Where in the text each student's round was counted last. */
    private static Map<List<Object>, Integer> counted(List<Finding> findings) {
        Map<List<Object>, Integer> counted = new HashMap<>();
        for (Finding finding : findings) {
            if (finding instanceof Reading reading) {
                reading.rounds()
                        .forEach(round -> counted.merge(
                                List.of(reading.student(), round),
                                reading.source().start(),
                                Math::max));
            }
        }
        return counted;
    }

    /** What is only inferred does not stand against a count that was told. */
    private static Reading replaced(Reading before, Reading now) {
        return now.inferred() && !before.inferred() ? before : now.after(before);
    }

    private static List<Object> rounds(Reading reading) {
        // without a student there is no telling whether two readings are one person's
        Object who = reading.student().<Object>map(name -> name).orElse(reading.source());
        return List.of(who, reading.part(), reading.from(), reading.to());
    }
}
