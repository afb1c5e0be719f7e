package roundwright.workbook;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.store.FiledReport;

/**
 * The reports of one group, by student. A copy shares with the shelf it was made from whatever is not changed in it, so that one more
 * count costs no more where there are many. Changed only while it belongs to a {@link Draft}.
 */
final class ReportShelf {
    private final Map<StudentId, OfStudent> students;
    /** Stands with the reports that were copied for this shelf, and are shared with none before. */
    private final Object own = new Object();

    ReportShelf() {
        this(Map.of());
    }

    private ReportShelf(Map<StudentId, OfStudent> students) {
        this.students = new HashMap<>(students);
    }

    ReportShelf copy() {
        return new ReportShelf(students);
    }

    /** What a student has reported, by the reports' numbers, to be changed. */
    Map<Object, FiledReport> toChange(StudentId student) {
        OfStudent found = students.get(student);
        if (found == null || found.shelf != own) {
            found = new OfStudent(own, found == null ? Map.of() : found.filed);
            students.put(student, found);
        }
        return found.filed;
    }

    /** What a student has reported, in the order in which it was entered: the same list for as long as it says the same. */
    List<CountReport> of(StudentId student) {
        OfStudent found = students.get(student);
        return found == null ? List.of() : found.inOrder();
    }

    Optional<CountReport> find(long sequence) {
        return students.values().stream()
                .flatMap(student -> Optional.ofNullable(student.filed.get(sequence)).stream())
                .map(FiledReport::report)
                .findFirst();
    }

    /** Everybody's, in no order. */
    Stream<CountReport> all() {
        return students.values().stream()
                .flatMap(student -> student.filed.values().stream())
                .map(FiledReport::report);
    }

    /** The largest number of a report; 0 where there is none. */
    long newest() {
        long newest = 0;
        for (OfStudent student : students.values()) {
            for (FiledReport filed : student.filed.values()) {
                newest = Math.max(newest, filed.report().sequence());
            }
        }
        return newest;
    }

    int size() {
        return students.values().stream()
                .mapToInt(student -> student.filed.size())
                .sum();
    }

    boolean sameAs(ReportShelf other) {
        return size() == other.size()
                && students.entrySet().stream()
                        .allMatch(entry ->
                                entry.getValue().filed.isEmpty() || other.has(entry.getKey(), entry.getValue().filed));
    }

    private boolean has(StudentId student, Map<Object, FiledReport> reports) {
        OfStudent found = students.get(student);
        return found != null && found.filed.equals(reports);
    }

    /** One student's. */
    private static final class OfStudent {
        private final Object shelf;
        private final Map<Object, FiledReport> filed;
        private volatile List<CountReport> inOrder;

        OfStudent(Object shelf, Map<Object, FiledReport> filed) {
            this.shelf = shelf;
            this.filed = new LinkedHashMap<>(filed);
        }

        List<CountReport> inOrder() {
            List<CountReport> known = inOrder;
            if (known == null) {
                known = filed.values().stream()
                        .map(FiledReport::report)
                        .sorted(Comparator.comparingLong(CountReport::sequence))
                        .toList();
                inOrder = known;
            }
            return known;
        }
    }
}
