package roundwright.desktop.insight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import roundwright.course.Course;
import roundwright.group.CountReport;
import roundwright.group.Pace;
import roundwright.group.StudentId;
import roundwright.mistakes.Adviser;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Explanations;
import roundwright.mistakes.story.Rates;

/**
 * All that a student's reports say.
 *
 * @param reports what it was worked out from
 * @param bySequence by the number of the report
 */
public record StudentInsights(List<CountReport> reports, Map<Long, Insight> bySequence) {
    public StudentInsights {
        reports = List.copyOf(reports);
        bySequence = Map.copyOf(bySequence);
    }

    /** Works it out: about a millisecond a report. */
    static StudentInsights of(Course course, StudentId student, List<CountReport> reports, Rates rates) {
        List<CountReport> standing =
                reports.stream().filter(CountReport::stands).toList();
        Explanations explanations = Explanations.of(course.pattern(), standing, id -> rates);
        Adviser adviser = new Adviser(course.pattern(), pace(course, standing));
        Map<Long, Insight> found = new LinkedHashMap<>();
        List<Explanation> before = new ArrayList<>();
        for (Explanation explanation : explanations.of(student)) {
            found.put(explanation.report().sequence(), new Insight(explanation, adviser.of(explanation, before)));
            before.add(explanation);
        }
        return new StudentInsights(reports, found);
    }

    private static OptionalDouble pace(Course course, List<CountReport> reports) {
        OptionalDouble own = Pace.of(reports);
        return own.isPresent() ? own : course.settings().pace();
    }

    public Optional<Insight> of(CountReport report) {
        return Optional.ofNullable(bySequence.get(report.sequence()));
    }
}
