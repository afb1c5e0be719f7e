package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import roundwright.notation.LineReader;

/**
 * A pattern of twelve hundred lines in several ways of writing: its lines into trees, the whole pattern, and a hand-written
 * parser of another text language on the same text. {@code java -cp target/roundwright.jar roundwright.pattern.ReaderBenchmark}
 * prints the speed of the first two as parts of the third's.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@State(Scope.Benchmark)
public class ReaderBenchmark {
    private static final int ROUNDS = 1200;

    private final Parser other = Parser.builder().build();
    private String text = "";
    private List<String> lines = List.of();

    /** Runs all three and prints the ratios. */
    public static void main(String[] arguments) throws RunnerException {
        String own = ReaderBenchmark.class.getSimpleName();
        double[] took = new Runner(new OptionsBuilder().include(own).build())
                .run().stream()
                        .sorted((one, two) -> name(one).compareTo(name(two)))
                        .mapToDouble(result -> result.getPrimaryResult().getScore())
                        .toArray();
        System.out.printf("lines %.2f, whole pattern %.2f of the other parser's speed%n", took[1] / took[0], took[1] / took[2]);
    }

    private static String name(RunResult result) {
        return result.getPrimaryResult().getLabel();
    }

    @Setup
    public void write() {
        text = GrowingPattern.of(ROUNDS);
        lines = text.lines().toList();
    }

    @Benchmark
    public void linesIntoTrees(Blackhole sink) {
        lines.forEach(line -> sink.consume(LineReader.read(line)));
    }

    @Benchmark
    public Pattern wholePattern() {
        return PatternReader.readBare(Optional.empty(), text);
    }

    @Benchmark
    public Node otherParser() {
        return other.parse(text);
    }
}
