package roundwright.fuzz;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * Puts made-up and spoilt inputs through every door, each with a limit on its time, in a machine whose memory is limited.
 *
 * <p>The short run is a test; a long one is {@code java -Xmx512m -cp target/test-classes:… roundwright.fuzz.FuzzRun MINUTES SEED}. What
 * went wrong is left in {@code target/fuzz}, with the number that makes the same input again.
 */
public final class FuzzRun {
    private static final int HANGS_SECONDS = 120;
    /** An input of more than 200 kB may take a second for each 100 kB. */
    private static final int LARGE_BYTES_A_MILLI = 100;

    private static final Path FOUND = Path.of("target/fuzz");

    /** What came of one door. */
    static final class Figures {
        int inputs;
        long slowest;
        final List<String> failures = new ArrayList<>();
    }

    private final Map<String, Figures> figures = new LinkedHashMap<>();
    private final List<Door> doors = new ArrayList<>();
    private final Path home = Files.createTempDirectory("roundwright-fuzz");
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private ExecutorService worker = worker();

    FuzzRun() throws Exception {
        doors.addAll(TextDoors.all());
        doors.addAll(new FileDoors(home).all());
        doors.add(new TablesDoor());
        doors.add(new SheetsDoor());
        doors.forEach(door -> figures.put(door.name(), new Figures()));
    }

    /** Arguments: minutes, and the first seed. */
    public static void main(String[] arguments) throws Exception {
        FuzzRun run = new FuzzRun();
        long until = System.nanoTime() + TimeUnit.MINUTES.toNanos(Long.parseLong(arguments[0]));
        long seed = Long.parseLong(arguments[1]);
        while (System.nanoTime() < until) {
            run.round(seed++, 20);
            if (seed % 50 == 0) {
                System.out.println(run.told());
            }
        }
        System.out.println(run.told());
        System.exit(run.failures().isEmpty() ? 0 : 1);
    }

    /** One input for the slow door of sheets, and some for each other. */
    void round(long seed, int times) throws Exception {
        for (Door door : doors) {
            int inputs = door.seconds() > 2 ? 1 : times;
            for (int time = 0; time < inputs; time++) {
                once(door, seed * 1000 + time);
            }
        }
    }

    private void once(Door door, long seed) throws Exception {
        Path folder = Files.createDirectories(home.resolve("input"));
        Figures of = figures.get(door.name());
        of.inputs++;
        Future<Long> done = worker.submit(() -> {
            long begin = threads.getCurrentThreadCpuTime();
            door.once(new Random(seed), folder);
            return threads.getCurrentThreadCpuTime() - begin;
        });
        try {
            long millis = done.get(HANGS_SECONDS, TimeUnit.SECONDS) / 1_000_000;
            of.slowest = Math.max(of.slowest, millis);
            if (millis > Math.max(door.seconds() * 1000L, size(folder) / LARGE_BYTES_A_MILLI)) {
                keep(door, seed, folder, new AssertionError("took " + millis + " ms of processor time"));
            }
        } catch (java.util.concurrent.ExecutionException failure) {
            keep(door, seed, folder, failure.getCause());
        } catch (TimeoutException hangs) {
            keep(door, seed, folder, new AssertionError("hangs"));
            worker = worker();
        }
        clear(folder);
    }

    private static long size(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.mapToLong(path -> path.toFile().length()).sum();
        }
    }

    private static ExecutorService worker() {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(null, task, "fuzz", 1 << 20);
            thread.setDaemon(true);
            return thread;
        });
    }

    private void keep(Door door, long seed, Path folder, Throwable failure) throws IOException {
        Figures of = figures.get(door.name());
        String name = door.name() + "-" + seed;
        of.failures.add(name + ": " + failure);
        Path kept = Files.createDirectories(FOUND.resolve(name));
        StringBuilder trace = new StringBuilder().append(failure).append('\n');
        for (StackTraceElement frame : failure.getStackTrace()) {
            trace.append("  ").append(frame).append('\n');
        }
        Files.writeString(kept.resolve("failure.txt"), trace);
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Files.copy(path, kept.resolve(path.getFileName()), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    static void clear(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }

    List<String> failures() {
        return figures.values().stream().flatMap(of -> of.failures.stream()).toList();
    }

    String told() {
        StringBuilder told = new StringBuilder();
        figures.forEach((name, of) -> told.append(String.format(
                "%s: %d inputs, slowest %d ms, %d failures; ", name, of.inputs, of.slowest, of.failures.size())));
        Runtime machine = Runtime.getRuntime();
        return told.append((machine.totalMemory() - machine.freeMemory()) >> 20)
                .append(" MB in use")
                .toString();
    }
}
