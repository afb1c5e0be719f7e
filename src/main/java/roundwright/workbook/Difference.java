package roundwright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.group.CountReport;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.store.KeptCourse;
import roundwright.wording.Wording;

/**
 * What would change if one state of the file took the place of another.
 *
 * @param coursesBack names of courses that are only in the other state
 * @param coursesLost names of courses that are only in the present one
 * @param coursesChanged names of courses with another text
 * @param studentsBack names of students that are only in the other state
 * @param studentsLost names of students that are only in the present one
 * @param counts standing reports
 * @param sessions sessions with their logs and registers
 * @param notes notes on students' rounds
 */
public record Difference(
        List<String> coursesBack,
        List<String> coursesLost,
        List<String> coursesChanged,
        List<String> studentsBack,
        List<String> studentsLost,
        Tally counts,
        Tally sessions,
        Tally notes) {
    /**
     * How many of a kind come and go; what changed is in both.
     *
     * @param back only in the other state
     * @param lost only in the present one
     */
    public record Tally(int back, int lost) {
        static Tally between(Map<Object, ?> now, Map<Object, ?> then) {
            return new Tally(missing(then, now), missing(now, then));
        }

        private static int missing(Map<Object, ?> from, Map<Object, ?> in) {
            return (int) from.entrySet().stream()
                    .filter(entry -> !Objects.equals(entry.getValue(), in.get(entry.getKey())))
                    .count();
        }
    }

    private static final Wording WORDS = Wording.of("workbook");
    private static final int MOST_NAMES = 12;

    /** Compares what is with what would be. */
    static Difference between(WorkbookView now, WorkbookView then) {
        return new Difference(
                names(then.coursesCopy(), now.coursesCopy(), KeptCourse::name),
                names(now.coursesCopy(), then.coursesCopy(), KeptCourse::name),
                changed(now, then),
                names(then.studentsCopy(), now.studentsCopy(), Student::name),
                names(now.studentsCopy(), then.studentsCopy(), Student::name),
                Tally.between(counts(now), counts(then)),
                Tally.between(sessions(now), sessions(then)),
                Tally.between(notes(now), notes(then)));
    }

    /** Whether both states hold the same, as far as it is told here. */
    public boolean nothing() {
        return Stream.of(coursesBack, coursesLost, coursesChanged, studentsBack, studentsLost)
                        .allMatch(List::isEmpty)
                && Stream.of(counts, sessions, notes).allMatch(each -> each.back() + each.lost() == 0);
    }

    /** What a person is told of it, a sentence each. */
    public List<String> sentences() {
        List<String> said = new ArrayList<>();
        if (nothing()) {
            said.add(WORDS.say("difference.nothing"));
        }
        add(said, "courses-back", coursesBack);
        add(said, "courses-lost", coursesLost);
        add(said, "courses-changed", coursesChanged);
        add(said, "students-back", studentsBack);
        add(said, "students-lost", studentsLost);
        add(said, "counts", counts);
        add(said, "sessions", sessions);
        add(said, "notes", notes);
        return said;
    }

    private static void add(List<String> said, String key, List<String> names) {
        if (!names.isEmpty()) {
            List<String> shown = new ArrayList<>(names.subList(0, Math.min(MOST_NAMES, names.size())));
            if (names.size() > MOST_NAMES) {
                shown.add(WORDS.say("difference.others", names.size() - MOST_NAMES));
            }
            said.add(WORDS.say("difference." + key, Wording.list(shown)));
        }
    }

    private static void add(List<String> said, String key, Tally tally) {
        if (tally.back() + tally.lost() > 0) {
            said.add(WORDS.say("difference." + key, tally.back(), tally.lost()));
        }
    }

    private static <V> List<String> names(Map<Object, V> from, Map<Object, V> in, Function<V, String> name) {
        return from.entrySet().stream()
                .filter(entry -> !Optional.ofNullable(in.get(entry.getKey()))
                        .map(name)
                        .equals(Optional.of(name.apply(entry.getValue()))))
                .map(entry -> name.apply(entry.getValue()))
                .sorted()
                .toList();
    }

    private static List<String> changed(WorkbookView now, WorkbookView then) {
        return now.courses().stream()
                .filter(course -> then.course(course.id())
                        .filter(other -> !other.equals(course) && other.name().equals(course.name()))
                        .isPresent())
                .map(KeptCourse::name)
                .toList();
    }

    private static Map<Object, ?> counts(WorkbookView view) {
        return view.groups().stream()
                .flatMap(group -> group.reports().stream())
                .filter(CountReport::stands)
                .collect(Collectors.toMap(CountReport::sequence, report -> report));
    }

    private static Map<Object, ?> sessions(WorkbookView view) {
        Map<Object, Object> sessions = new HashMap<>();
        for (GroupView group : view.groups()) {
            Map<Object, List<RegisterMark>> marks =
                    group.marks().stream().collect(Collectors.groupingBy(RegisterMark::session));
            for (Session session : group.sessions()) {
                sessions.put(session.id(), List.of(session, marks.getOrDefault(session.id(), List.of())));
            }
        }
        return sessions;
    }

    private static Map<Object, ?> notes(WorkbookView view) {
        return view.groups().stream()
                .flatMap(group -> group.notes().stream())
                .collect(Collectors.toMap(
                        note -> List.of(note.group(), note.student(), note.part(), note.round()), Note::text));
    }
}
