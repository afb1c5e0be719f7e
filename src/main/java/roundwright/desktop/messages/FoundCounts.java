package roundwright.desktop.messages;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.messages.Finding;
import roundwright.group.messages.MessagesReader;
import roundwright.group.messages.Reading;
import roundwright.group.messages.Unplaced;
import roundwright.workbook.NewCount;

/**
 * What was found in a pasted text.
 *
 * @param counts counts that can be filed, in the order of the text
 * @param undecided passages that speak of the work but give no count that could be filed
 */
public record FoundCounts(List<FoundCount> counts, List<String> undecided) {
    private static final int LONGEST = 90;

    /**
     * A count that can be filed.
     *
     * @param sure whether the text surely means it; what is not sure is filed only when the teacher says so
     * @param expected the count that the pattern says
     * @param source the words it was read from
     */
    public record FoundCount(
            Student student,
            RoundPlace place,
            int count,
            boolean sure,
            OptionalInt expected,
            String source,
            NewCount filed) {}

    public FoundCounts {
        counts = List.copyOf(counts);
        undecided = List.copyOf(undecided);
    }

    /**
     * Reads a text.
     *
     * @param part the part that is meant where a message names none
     */
    public static FoundCounts read(String text, OpenCourse course, List<Student> students, String part) {
        List<String> names = students.stream().map(Student::name).toList();
        List<FoundCount> counts = new ArrayList<>();
        List<String> undecided = new ArrayList<>();
        for (Finding finding : new MessagesReader(course.course(), names).read(text)) {
            String source = shortened(finding.source().of(text));
            if (finding instanceof Reading reading) {
                List<FoundCount> placed = placed(reading, course, students, part, source);
                counts.addAll(placed);
                if (placed.isEmpty()) {
                    undecided.add(source);
                }
            } else if (finding instanceof Unplaced unplaced) {
                undecided.add(
                        unplaced.student().map(name -> name + ": " + source).orElse(source));
            }
        }
        return new FoundCounts(counts, undecided);
    }

    private static List<FoundCount> placed(
            Reading reading, OpenCourse course, List<Student> students, String part, String source) {
        Optional<Student> student = reading.student()
                .flatMap(name ->
                        students.stream().filter(one -> one.name().equals(name)).findFirst());
        String in = reading.part().orElse(part);
        return student.stream()
                .flatMap(found -> reading.rounds().stream()
                        .map(round -> new RoundPlace(in, round))
                        .filter(place -> course.round(place).isPresent())
                        .map(place -> count(found, place, reading, course, source)))
                .toList();
    }

    private static FoundCount count(
            Student student, RoundPlace place, Reading reading, OpenCourse course, String source) {
        NewCount filed = new NewCount(
                student.id(),
                place.part(),
                place.round(),
                reading.pulledBack() ? CountReport.Kind.PULLED_BACK : CountReport.Kind.COUNTED,
                OptionalInt.of(reading.count()),
                reading.at().map(at -> at.atZone(ZoneId.systemDefault()).toInstant()),
                "");
        boolean sure = !reading.doubtful();
        return new FoundCount(student, place, reading.count(), sure, course.expected(place), source, filed);
    }

    private static String shortened(String source) {
        String line = source.strip().replaceAll("\\s+", " ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST).stripTrailing() + "…";
    }
}
