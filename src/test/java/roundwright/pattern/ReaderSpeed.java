package roundwright.pattern;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.commonmark.parser.Parser;
import roundwright.notation.LineReader;

/**
 * Times the reader and a hand-written parser of another text language on the same text in the same run, in processor time:
 * {@code java -cp … roundwright.pattern.ReaderSpeed}. Reading lines into trees is what compares; whole patterns are checked
 * besides.
 */
public final class ReaderSpeed {
    private static final Path CORPUS = Path.of("src/test/resources/roundwright/notation/corpus/right");
    private static final int WARM_UP = 25;
    private static final int MEASURED = 10;

    private ReaderSpeed() {}

    public static void main(String[] arguments) {
        List<String> texts = texts();
        Parser other = Parser.builder().build();
        say(
                "lines into trees",
                texts,
                text -> text.lines()
                        .mapToInt(line -> LineReader.read(line).body().size())
                        .sum());
        say(
                "whole patterns",
                texts,
                text -> PatternReader.readBare(Optional.empty(), text).parts().size());
        say("the other parser", texts, text -> other.parse(text).hashCode());
    }

    private static void say(String name, List<String> texts, ToIntFunction<String> work) {
        long characters = texts.stream().mapToLong(String::length).sum();
        int sink = 0;
        for (int run = 0; run < WARM_UP; run++) {
            sink += texts.stream().mapToInt(work).sum();
        }
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        for (int run = 0; run < MEASURED; run++) {
            sink += texts.stream().mapToInt(work).sum();
        }
        long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin;
        double millions = characters * MEASURED * 1e3 / took;
        System.out.println(
                String.format(Locale.ROOT, "%-18s %6.1f million characters a second (%d)", name, millions, sink));
    }

    private static List<String> texts() {
        try (Stream<Path> walk = Files.walk(CORPUS)) {
            return walk.filter(path -> path.toString().endsWith(".tsv"))
                    .sorted()
                    .map(ReaderSpeed::lines)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String lines(Path path) {
        try (Stream<String> lines = Files.lines(path)) {
            StringBuilder text = new StringBuilder();
            lines.filter(line -> !line.startsWith("%"))
                    .forEach(line -> text.append(lastColumn(line)).append('\n'));
            return text.toString();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String lastColumn(String line) {
        String[] columns = line.split("\t", -1);
        return columns.length > 5 ? columns[5] : line;
    }
}
