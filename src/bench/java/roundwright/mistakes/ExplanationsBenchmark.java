package roundwright.mistakes;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.learning.Learning;
import roundwright.mistakes.story.Rates;

/**
 * Thirty students over sixty rounds: everything from nothing, one new report, learning; and how it grows with the stitches of a
 * round. To be held against: 150 ms for the group and 3 ms for a report, at 40 stitches, on one core.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@State(Scope.Benchmark)
public class ExplanationsBenchmark {
    private static final int STUDENTS = 30;
    private static final int ROUNDS = 60;

    @Param({"16", "40", "80", "160"})
    private int stitches;

    private TrialClass trial;

    @Setup
    public void invent() {
        trial = new TrialClass(STUDENTS, ROUNDS, stitches, 7);
    }

    /** Every report before the last, explained. */
    @State(Scope.Thread)
    public static class ButOne {
        private Explanations explanations;
        private CountReport last;

        @Setup(Level.Invocation)
        public void explain(ExplanationsBenchmark all) {
            List<CountReport> own = all.trial.reports().stream()
                    .filter(report -> report.student().equals(new StudentId(0)))
                    .toList();
            explanations = Explanations.of(all.trial.pattern(), own.subList(0, own.size() - 1), id -> Rates.STORY);
            last = own.get(own.size() - 1);
        }
    }

    @Benchmark
    public int wholeGroup() {
        Explanations all = Explanations.of(trial.pattern(), trial.reports(), id -> Rates.STORY);
        int explained = 0;
        for (int student = 0; student < STUDENTS; student++) {
            explained += all.of(new StudentId(student)).size();
        }
        return explained;
    }

    @Benchmark
    public List<Explanation> oneNewReport(ButOne but) {
        but.explanations.add(but.last);
        return but.explanations.of(new StudentId(0));
    }

    @Benchmark
    public Rates learning() {
        Learning learned = Learning.of(trial.pattern(), trial.reports());
        Rates rates = learned.group().rates();
        for (int student = 0; student < STUDENTS; student++) {
            rates = learned.student(new StudentId(student)).rates();
        }
        return rates;
    }
}
