package roundwright.desktop.counts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import roundwright.desktop.chart.ChartSubject;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.insight.Insight;
import roundwright.desktop.insight.StudentInsights;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.mistakes.State;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.ProbableRound;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.wording.Wording;

/**
 * A round as the pattern has it, and as the likeliest explanation of its count says it was worked.
 *
 * @param written as the pattern has it
 * @param worked as it was probably worked
 * @param marked whether a mistake is marked in it
 */
record ProbableCharts(ChartSubject written, ChartSubject worked, boolean marked) {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int COUNTS_TRIED = 4;

    /** Empty where the count is right, may only be a miscount, or is not explained in a way that can be drawn. */
    static Optional<ProbableCharts> of(
            OpenCourse course, StudentInsights insights, Insight insight, boolean leftHanded) {
        Finding finding = insight.explanation().after();
        if (insight.explanation().state() != State.OFF || finding.causes().isEmpty()) {
            return Optional.empty();
        }
        Kinds kinds = finding.causes().get(0).kinds();
        RoundPlace place = new RoundPlace(finding.part(), finding.round());
        Optional<Steps> written = course.round(place).flatMap(Round::steps);
        boolean miscounted =
                kinds.has(Kind.MISCOUNTED) && kinds.without(Kind.MISCOUNTED).none();
        return written.filter(steps -> !miscounted)
                .flatMap(steps -> ProbableRound.of(known(course, insights, finding, steps), kinds)
                        .map(round -> charts(course, place, steps, round, leftHanded)));
    }

    private static ProbableCharts charts(
            OpenCourse course, RoundPlace place, Steps written, ProbableRound round, boolean leftHanded) {
        var setting = course.chart(place, leftHanded);
        Set<Integer> wrong = round.wrong();
        return new ProbableCharts(
                new ChartSubject(WORDS.say("chart-written", written.makes()), written, course.terms(), setting),
                new ChartSubject(
                        WORDS.say("chart-worked", round.steps().makes()),
                        round.steps(),
                        course.terms(),
                        setting.marking(wrong)),
                !wrong.isEmpty());
    }

    private static ProbableRound.Known known(
            OpenCourse course, StudentInsights insights, Finding finding, Steps written) {
        List<Steps> neighbours = Stream.of(finding.round() - 1, finding.round() + 1)
                .map(number -> new RoundPlace(finding.part(), number))
                .flatMap(place -> course.round(place).flatMap(Round::steps).stream())
                .toList();
        return new ProbableRound.Known(
                written,
                neighbours,
                below(course, insights, new RoundPlace(finding.part(), finding.round() - 1), written),
                counts(finding));
    }

    private static List<Integer> counts(Finding finding) {
        return finding.counts().stream()
                .map(Finding.TrueCount::count)
                .limit(COUNTS_TRIED)
                .toList();
    }

    /** What the round below most likely has, by the reports of it; what the line uses where there are none. */
    private static List<Integer> below(OpenCourse course, StudentInsights insights, RoundPlace below, Steps written) {
        List<Integer> tried = new ArrayList<>();
        insights.bySequence().values().stream()
                .filter(insight -> isOf(insight.explanation().report(), below))
                .max(java.util.Comparator.comparingLong(
                        insight -> insight.explanation().report().sequence()))
                .ifPresent(insight -> tried.addAll(counts(insight.explanation().after())));
        course.expected(below).ifPresent(tried::add);
        tried.add(written.takes());
        return tried.stream().distinct().toList();
    }

    private static boolean isOf(CountReport report, RoundPlace place) {
        return report.part().equals(place.part()) && report.round() == place.round();
    }
}
