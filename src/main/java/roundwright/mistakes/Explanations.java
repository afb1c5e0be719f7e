package roundwright.mistakes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.chain.StudentChain;
import roundwright.mistakes.chain.WorkedRound;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Pattern;

/**
 * Explains the reports of any number of students on one pattern.
 *
 * <p>Work is shared between students with the same rates. One new report of a student who was dealt with lately is explained in
 * about a millisecond; for another their earlier reports are gone through again first. Not for several threads at once.
 */
public final class Explanations {
    /** Chains of so many students, and what was worked out for so many different rates, are kept: a group's worth. */
    private static final int KEPT = 40;

    private final Pattern pattern;
    private final Function<StudentId, Rates> rates;
    private final Map<Rates, PatternStory> stories = new Latest<>();
    private final Map<StudentId, StudentChain> chains = new Latest<>();
    private final Map<StudentId, Student> students = new LinkedHashMap<>();

    /** What a student reported, and what each report said as it came. */
    private record Student(List<CountReport> reports, Map<CountReport, Finding> found) {}

    /** Keeps what was used last. */
    private static final class Latest<K, V> extends LinkedHashMap<K, V> {
        Latest() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > KEPT;
        }
    }

    /** No reports yet. */
    public Explanations(Pattern pattern, Function<StudentId, Rates> rates) {
        this.pattern = pattern;
        this.rates = rates;
    }

    /** All of a group's reports, in the order in which they were entered. */
    public static Explanations of(Pattern pattern, List<CountReport> reports, Function<StudentId, Rates> rates) {
        Explanations explanations = new Explanations(pattern, rates);
        byStudent(reports).values().forEach(own -> own.forEach(explanations::add));
        return explanations;
    }

    /** Hands out the explanations of one student after another and keeps none, so that any number can be dealt with. */
    public static void each(
            Pattern pattern,
            List<CountReport> reports,
            Function<StudentId, Rates> rates,
            BiConsumer<StudentId, List<Explanation>> taker) {
        Explanations explanations = new Explanations(pattern, rates);
        byStudent(reports).forEach((student, own) -> {
            own.forEach(explanations::add);
            taker.accept(student, explanations.of(student));
            explanations.students.remove(student);
        });
    }

    private static Map<StudentId, List<CountReport>> byStudent(List<CountReport> reports) {
        return reports.stream()
                .collect(Collectors.groupingBy(CountReport::student, LinkedHashMap::new, Collectors.toList()));
    }

    /** Adds the next report; whether it says anything that can be explained. */
    public boolean add(CountReport report) {
        Student student =
                students.computeIfAbsent(report.student(), id -> new Student(new ArrayList<>(), new LinkedHashMap<>()));
        Optional<Finding> finding = chain(report.student()).add(report);
        student.reports().add(report);
        finding.ifPresent(found -> student.found().put(report, found));
        return finding.isPresent();
    }

    private StudentChain chain(StudentId id) {
        StudentChain known = chains.get(id);
        if (known != null) {
            return known;
        }
        StudentChain chain =
                new StudentChain(stories.computeIfAbsent(rates.apply(id), same -> new PatternStory(pattern, same)));
        students.get(id).reports().forEach(chain::enter);
        chains.put(id, chain);
        return chain;
    }

    /** The explanation of every report of a student, in the order of the reports. */
    public List<Explanation> of(StudentId id) {
        if (!students.containsKey(id)) {
            return List.of();
        }
        StudentChain chain = chain(id);
        Map<Long, Finding> after = chain.afterAll();
        List<Explanation> explanations = new ArrayList<>();
        students.get(id).found().forEach((report, soFar) -> {
            Optional<WorkedRound> round = chain.story().round(report.part(), report.round());
            explanations.add(new Explanation(
                    report,
                    round.map(WorkedRound::count).orElse(OptionalInt.empty()),
                    round.flatMap(WorkedRound::line)
                            .filter(WrittenRound::shapes)
                            .isPresent(),
                    soFar,
                    after.get(report.sequence())));
        });
        return explanations;
    }
}
