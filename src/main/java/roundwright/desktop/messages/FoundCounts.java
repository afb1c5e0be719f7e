package roundwright.desktop.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.messages.Finding;
import roundwright.group.messages.MessagesReader;
import roundwright.group.messages.Reading;
import roundwright.group.messages.Unplaced;
import roundwright.notation.Span;
import roundwright.wording.Beginning;

/**
 * What was found in a pasted text.
 *
 * @param counts counts that can be filed, in the order of the text
 * @param undecided passages that speak of the work but give no count that could be filed
 */
public record FoundCounts(String text, List<FoundCount> counts, List<Undecided> undecided) {
    private static final int LONGEST = 90;

    public FoundCounts {
        counts = List.copyOf(counts);
        undecided = List.copyOf(undecided);
    }

    /**
     * What a text is read against.
     *
     * @param part the part that is meant where a message names none
     * @param nameless whose words they are where no name stands
     * @param reports what a student has reported so far
     */
    public record Setting(
            OpenCourse course,
            List<Student> students,
            String part,
            Optional<Student> nameless,
            Function<StudentId, List<CountReport>> reports) {}

    public static FoundCounts read(String text, Setting setting) {
        List<String> names = setting.students().stream().map(Student::name).toList();
        List<FoundCount> counts = new ArrayList<>();
        List<Undecided> undecided = new ArrayList<>();
        Placing placing = new Placing(setting);
        for (Finding finding : new MessagesReader(setting.course().course(), names).read(text)) {
            List<FoundCount> placed =
                    finding instanceof Reading reading ? placing.of(reading) : placing.unfinished((Unplaced) finding);
            counts.addAll(placed);
            if (placed.isEmpty()) {
                undecided.add(undecided(finding));
            }
        }
        return new FoundCounts(text, counts, undecided);
    }

    private static Undecided undecided(Finding finding) {
        if (finding instanceof Unplaced unplaced) {
            return new Undecided(unplaced.reason().word(), unplaced.student(), unplaced.source());
        }
        Reading reading = (Reading) finding;
        String why = reading.student().isEmpty() ? "no-student" : "unknown-round";
        return new Undecided(why, reading.student(), reading.source());
    }

    /** The words of a passage, on one line. */
    public String words(Span source) {
        return Beginning.shown(source.of(text).strip().replaceAll("\\s+", " "), LONGEST);
    }
}
