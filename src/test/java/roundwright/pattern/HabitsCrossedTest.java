package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Crosses the habits of writers at random, thousands of combinations; {@code target/habits-report.txt} tells what is misread. */
class HabitsCrossedTest {
    private static final int WRITERS = Integer.getInteger("habits.writers", 2000);
    private static final long SEED = Long.getLong("seed", 1L);
    private static final double RIGHT = 0.98;

    private final Map<String, List<String>> missesByWay = new TreeMap<>();
    private final Map<String, int[]> tallies = new TreeMap<>();
    private int hits;
    private int all;
    private int calledWrong;

    @Test
    void habitsAreReadInAnyCombination() throws IOException {
        HabitBook book = new HabitBook();
        for (long seed = SEED; seed < SEED + WRITERS; seed++) {
            read(new HabitWriter(seed, book), seed);
        }
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/habits-report.txt"), report(), StandardCharsets.UTF_8);
        double share = (double) hits / all;
        assertTrue(share >= RIGHT, () -> hits + " of " + all + " lines are read right");
    }

    private void read(HabitWriter writer, long seed) {
        List<HabitWriter.Told> told = writer.pattern();
        StringBuilder text = new StringBuilder();
        told.forEach(line -> text.append(line.text()).append('\n'));
        Optional<roundwright.notation.Terms> terms = seed % 2 == 0 ? Optional.of(writer.terms) : Optional.empty();
        List<Line> lines = PatternReader.readBare(terms, text).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
        for (int i = 0; i < told.size() && i < lines.size(); i++) {
            compare(told.get(i), lines.get(i), seed);
        }
    }

    private void compare(HabitWriter.Told told, Line line, long seed) {
        boolean hit = line.takes().orElse(-1) == told.takes()
                && line.makes().orElse(-1) == told.makes()
                && line.stated().orElse(-1) == told.stated()
                && (line.verdict() == Verdict.ADDS_UP || line.verdict() == Verdict.NO_COUNT);
        all++;
        hits += hit ? 1 : 0;
        calledWrong += line.verdict() == Verdict.DOES_NOT_ADD_UP ? 1 : 0;
        for (HabitBook.Way way : told.ways()) {
            int[] tally = tallies.computeIfAbsent(way.toString(), none -> new int[2]);
            tally[0] += hit ? 1 : 0;
            tally[1]++;
            if (!hit) {
                missesByWay
                        .computeIfAbsent(way.toString(), none -> new ArrayList<>())
                        .add(describe(told, line, seed));
            }
        }
    }

    private static String describe(HabitWriter.Told told, Line line, long seed) {
        return seed + "\t" + line.text() + "\twanted " + told.takes() + ">" + told.makes() + "=" + told.stated() + "@"
                + told.below() + "\tgot " + line.takes().orElse(-1) + ">"
                + line.makes().orElse(-1) + "="
                + line.stated().orElse(-1) + "@" + line.available().orElse(-1) + " "
                + line.verdict().word();
    }

    private String report() {
        StringBuilder text = new StringBuilder(hits + " of " + all + " right, " + calledWrong + " called wrong\n");
        tallies.entrySet().stream()
                .filter(entry -> entry.getValue()[0] < entry.getValue()[1])
                .sorted(Comparator.comparingDouble(entry -> (double) entry.getValue()[0] / entry.getValue()[1]))
                .forEach(entry -> {
                    int[] tally = entry.getValue();
                    text.append(
                            String.format("%n%3d %% of %d\t%s%n", 100 * tally[0] / tally[1], tally[1], entry.getKey()));
                    missesByWay.get(entry.getKey()).stream()
                            .limit(3)
                            .forEach(miss -> text.append("      ").append(miss).append('\n'));
                });
        return text.toString();
    }
}
