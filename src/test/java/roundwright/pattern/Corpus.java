package roundwright.pattern;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Written rounds of invented writers, with their truth worked out without the reader.
 *
 * <p>A file is one writer. A line that starts with {@code %} describes the file; a line without a tab stands in the writer's text and
 * has no truth (blank, or a heading that starts a new part); every other line is {@code takes, makes, stated, available, verdict, the line
 * as written} and, for a planted mistake, {@code the line as it should be}, parted by tabs. A number may be {@code -} (none), {@code *}
 * (anything), or several that can be defended, {@code 12|24}; so may the verdict.
 */
final class Corpus {
    private static final Path ROOT = Path.of("src/test/resources/roundwright/notation/corpus");

    private Corpus() {}

    /** One writer's lines as they stand in the file. */
    record Writer(String name, String family, List<Entry> entries) {
        /** The text as a teacher would paste it. */
        String text() {
            return entries.stream().map(Entry::text).collect(Collectors.joining("\n"));
        }

        /** The entries of which the reader must give an account, in order. */
        List<Entry> told() {
            return entries.stream().filter(entry -> entry.truth().isPresent()).toList();
        }
    }

    /** A line of a writer. */
    record Entry(String text, Optional<Truth> truth, Optional<String> mend) {}

    /** What is true of a line. */
    record Truth(Number takes, Number makes, Number stated, Number available, Set<String> verdicts) {
        boolean hasCounts() {
            return takes.certain() && makes.certain();
        }

        boolean accepts(Verdict verdict) {
            return verdicts.contains("*") || verdicts.contains(verdict.word());
        }

        boolean isWrong() {
            return verdicts.equals(Set.of(Verdict.DOES_NOT_ADD_UP.word()));
        }

        boolean isRight() {
            return verdicts.contains(Verdict.ADDS_UP.word()) || verdicts.contains(Verdict.NO_COUNT.word());
        }
    }

    /** A number that may be none, anything, or one of several. */
    record Number(Set<String> written) {
        static Number of(String column) {
            return new Number(Set.of(column.split("\\|")));
        }

        boolean accepts(OptionalInt value) {
            return written.contains("*") || written.contains(value.isPresent() ? "" + value.getAsInt() : "-");
        }

        boolean certain() {
            return !written.contains("*") && !written.equals(Set.of("-"));
        }

        @Override
        public String toString() {
            return written.stream().sorted().collect(Collectors.joining("|"));
        }
    }

    /** All writers of one set: {@code right}, {@code mistakes} or {@code not-understood}. */
    static List<Writer> writers(String set) {
        return writers(ROOT.resolve(set));
    }

    static List<Writer> writers(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".tsv"))
                    .sorted()
                    .map(Corpus::writer)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Writer writer(Path file) {
        String name = file.getFileName().toString().replace(".tsv", "");
        String family = "";
        List<Entry> entries = new ArrayList<>();
        for (String line : lines(file)) {
            if (line.startsWith("% family: ")) {
                family = line.substring("% family: ".length()).split(";")[0];
            } else if (!line.startsWith("%")) {
                entries.add(entry(line));
            }
        }
        return new Writer(name, family, List.copyOf(entries));
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Entry entry(String line) {
        String[] columns = line.split("\t");
        if (columns.length < 6) {
            return new Entry(line, Optional.empty(), Optional.empty());
        }
        Truth truth = new Truth(
                Number.of(columns[0]),
                Number.of(columns[1]),
                Number.of(columns[2]),
                Number.of(columns[3]),
                Set.of(columns[4].split("\\|")));
        Optional<String> mend = columns.length > 6 ? Optional.of(columns[6]) : Optional.empty();
        return new Entry(columns[5], Optional.of(truth), mend);
    }
}
