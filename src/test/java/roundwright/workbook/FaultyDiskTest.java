package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.store.StoreException;

/**
 * A disk that fails: a tracer (strace, where there is one) lets single calls of a program that edits end in an error, or takes its time.
 * Each refused step is a sentence and changes nothing, but for one that the disk had all but kept, which is told as such; every acknowledged one is there when the file is opened again. {@code -Dfaults=N
 * -Dseed=N} for more.
 */
class FaultyDiskTest {
    private static final int RUNS = Integer.getInteger("faults", 1);
    private static final long SEED = Long.getLong("seed", 9);
    private static final int STEPS = 25;

    @TempDir
    Path folder;

    /**
     * @param injection what the tracer does, with a place for the numbers of the first call that fails and of the last
     * @param calls how many calls of this kind a run makes, about
     */
    private record Fault(String name, String injection, int calls) {
        String at(int first) {
            return String.format(injection, first, first + 4);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Fault> faults() {
        return Stream.of(
                new Fault("writing fails once", "pwrite64:error=EIO:when=%d", 200),
                new Fault("writing fails for a while", "pwrite64:error=EIO:when=%d..%d", 200),
                new Fault("the disk is full for a while", "pwrite64:error=ENOSPC:when=%d..%d", 200),
                new Fault("the disk is full for ever", "pwrite64:error=ENOSPC:when=%d+", 200),
                new Fault("what was written cannot be made sure", "fdatasync,fsync:error=EIO:when=%d", 90),
                new Fault("nothing can be made sure any more", "fdatasync,fsync:error=EIO:when=%d+", 90),
                new Fault("the journal cannot be emptied", "ftruncate:error=EIO:when=%d", 20),
                new Fault("reading fails once", "pread64:error=EIO:when=%d", 20));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void everyAcknowledgedStepIsThereAndNoOther(Fault fault) throws Exception {
        Random chance = new Random(SEED);
        int refusals = 0;
        for (int run = 0; run < RUNS; run++) {
            Path file = folder.resolve("faulty" + run + ".db");
            EditingChild.create(file).close();
            String injection = fault.at(4 + chance.nextInt(fault.calls()));
            List<String> said = run(file, chance.nextLong(), injection);
            String told = fault + ", seed " + SEED + ", " + injection + ": " + said;
            String last = "";
            for (String line : said) {
                if (line.startsWith("no ")) {
                    refusals++;
                    assertEquals(last, line.split(" ")[1], "a refused step changes nothing: " + told);
                    assertFalse(line.contains("Exception"), told);
                } else if (line.startsWith("ok ") || line.startsWith("unsure ")) {
                    last = line.split(" ")[1];
                }
            }
            boolean shut = said.stream().anyMatch(line -> line.startsWith("shut ") && line.contains("the disk"));
            assertTrue(shut || !last.isEmpty(), told);
            try (Workbook workbook = EditingChild.open(file)) {
                boolean unknown = said.get(Math.max(0, said.size() - 2)).startsWith("unsure ");
                assertEquals(
                        last.isEmpty() || unknown ? FaultyChild.print(workbook) : last,
                        FaultyChild.print(workbook),
                        told);
            }
        }
        System.out.printf("%s: %d runs, %d steps refused, nothing lost%n", fault, RUNS, refusals);
    }

    /** A share far away answers each call after a while. */
    @Test
    void aSlowShareIsOnlySlow() throws Exception {
        Path file = folder.resolve("slow.db");
        EditingChild.create(file).close();
        List<String> said = run(file, SEED, "pwrite64,fdatasync,fsync:delay_exit=4000");
        assertEquals("end", said.get(said.size() - 1), said.toString());
        assertTrue(said.stream().noneMatch(line -> line.startsWith("no ")), said.toString());
    }

    /** Two programs on one file: the second is told so, soon, and the first goes on. */
    @Test
    void aSecondProgramIsTurnedAway() throws Exception {
        Path file = folder.resolve("shared.db");
        EditingChild.create(file).close();
        Process child = new ProcessBuilder(java(EditingChild.class, file.toString(), "1")).start();
        try (var out = new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            out.readLine();
            long begin = System.nanoTime();
            StoreException.Locked locked = org.junit.jupiter.api.Assertions.assertThrows(
                    StoreException.Locked.class, () -> EditingChild.open(file));
            assertTrue(locked.getMessage().contains("open in another window"), locked.getMessage());
            assertTrue(System.nanoTime() - begin < TimeUnit.SECONDS.toNanos(5));
            assertTrue(child.isAlive());
        } finally {
            child.toHandle().destroyForcibly();
            child.waitFor();
        }
        EditingChild.open(file).close();
    }

    private List<String> run(Path file, long seed, String injection) throws IOException, InterruptedException {
        assumeTrue(traces(), "skipped: there is no tracer that may be used");
        List<String> command = new ArrayList<>(List.of("strace", "-f", "-qqq", "-o", "/dev/null"));
        command.addAll(List.of("-P", file.toString(), "-P", file + "-journal"));
        command.addAll(List.of("-e", "inject=" + injection));
        command.addAll(java(FaultyChild.class, file.toString(), Long.toString(seed), Integer.toString(STEPS)));
        Process child = new ProcessBuilder(command)
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        String out = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        child.waitFor();
        return out.lines().toList();
    }

    private static List<String> java(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    static boolean traces() throws InterruptedException {
        try {
            return new ProcessBuilder("strace", "-qqq", "-o", "/dev/null", "true")
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }
}
