package roundwright.mistakes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.chain.PartStory;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.chain.StudentChain;
import roundwright.mistakes.chain.WorkedRound;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Pattern;

/**
 * Explains the reports of any number of students on one pattern.
 *
 * <p>Work is shared between students with the same rates. One new report is explained in about a millisecond. Not for several
 * threads at once.
 */
public final class Explanations {
    private final Pattern pattern;
    private final Function<StudentId, Rates> rates;
    private final Map<Rates, PatternStory> stories = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Rates, PatternStory> eldest) {
            return size() > STORIES_KEPT;
        }
    };
    private final Map<StudentId, Student> students = new LinkedHashMap<>();

    /** Each student has a story of their own where their rates are their own; of these the ones used last are kept. */
    private static final int STORIES_KEPT = 40;

    /** A student's chain with what was found from each report as it came. */
    private static final class Student {
        private final StudentChain chain;
        private final Map<CountReport, Finding> found = new LinkedHashMap<>();

        Student(StudentChain chain) {
            this.chain = chain;
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
        reports.forEach(explanations::add);
        return explanations;
    }

    /** Adds the next report; whether it says anything that can be explained. */
    public boolean add(CountReport report) {
        Student student =
                students.computeIfAbsent(report.student(), id -> new Student(new StudentChain(story(rates.apply(id)))));
        Optional<Finding> finding = student.chain.add(report);
        finding.ifPresent(found -> student.found.put(report, found));
        return finding.isPresent();
    }

    private PatternStory story(Rates same) {
        return stories.computeIfAbsent(same, key -> new PatternStory(pattern, key));
    }

    /** The explanation of every report of a student, in the order of the reports. */
    public List<Explanation> of(StudentId id) {
        Student student = students.get(id);
        if (student == null) {
            return List.of();
        }
        Map<Long, Finding> after = student.chain.afterAll();
        List<Explanation> explanations = new ArrayList<>();
        student.found.forEach((report, soFar) -> {
            Optional<WorkedRound> round = round(student.chain.story(), report);
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

    private static Optional<WorkedRound> round(PatternStory story, CountReport report) {
        Optional<PartStory> part = story.part(report.part());
        return part.flatMap(in -> {
            OptionalInt place = in.place(report.round());
            return place.isPresent() ? Optional.of(in.rounds().get(place.getAsInt())) : Optional.empty();
        });
    }
}
