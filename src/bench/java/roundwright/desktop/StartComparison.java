package roundwright.desktop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Whole starts, to the first page with the opened file, held against a bare window in the same run: milliseconds, processor
 * milliseconds and resident memory some seconds later, medians, and their ratios to the bare window's. Needs a screen.
 *
 * <p>{@code java -cp target/roundwright.jar roundwright.desktop.StartComparison [runs] [installed program's folder]}
 */
public final class StartComparison {
    private static final Pattern READY = Pattern.compile("ready (\\d+)");
    private static final long REST_SECONDS = 3;
    private static final String BARE = "bare window";

    private final Map<String, List<String>> commands = new LinkedHashMap<>();
    private final Map<String, List<Seen>> seen = new LinkedHashMap<>();
    private final Path folder;

    /** One start. */
    private record Seen(double milliseconds, double processor, double megabytes) {}

    private StartComparison(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int runs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 9;
        StartComparison comparison = new StartComparison(Files.createTempDirectory("roundwright-starts"));
        comparison.prepare();
        if (arguments.length > 1) {
            comparison.commands.put("installed, shared classes", comparison.installed(Path.of(arguments[1])));
        }
        for (int run = 0; run < runs; run++) {
            for (String name : comparison.commands.keySet()) {
                comparison.start(name);
            }
        }
        comparison.report();
    }

    private void prepare() throws IOException, InterruptedException {
        String jar = System.getProperty("java.class.path");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> program = List.of(
                "-cp", jar, "roundwright.Roundwright", "--new-home", folder.resolve("home").toString(), "--sample");
        commands.put(BARE, List.of(java, "-cp", jar, BareWindow.class.getName()));
        commands.put("jar", joined(List.of(java, "-Droundwright.report-start=true"), program));
        Path archive = folder.resolve("start.jsa");
        List<String> quick = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable");
        List<String> dump = List.of("-XX:ArchiveClassesAtExit=" + archive, "-Droundwright.start-only=true");
        new ProcessBuilder(joined(List.of(java), quick, dump, program)).start().waitFor();
        commands.put(
                "jar, shared classes",
                joined(
                        List.of(java),
                        quick,
                        List.of("-XX:SharedArchiveFile=" + archive, "-Droundwright.report-start=true"),
                        program));
    }

    /** The installed program takes no switches, so it is started as its own small launcher would start it. */
    private List<String> installed(Path program) {
        Path app = program.resolve("lib/app");
        return List.of(
                program.resolve("lib/runtime/bin/java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xlog:disable",
                "-XX:SharedArchiveFile=" + app.resolve("start.jsa"),
                "-Droundwright.report-start=true",
                "-cp",
                app.resolve("roundwright.jar").toString(),
                "roundwright.Roundwright",
                "--new-home",
                folder.resolve("home").toString());
    }

    @SafeVarargs
    private static List<String> joined(List<String>... lists) {
        return Stream.of(lists).flatMap(List::stream).toList();
    }

    private void start(String name) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(commands.get(name)).start();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
            double ready = ready(lines);
            double processor = process.info().totalCpuDuration().orElseThrow().toMillis();
            TimeUnit.SECONDS.sleep(REST_SECONDS);
            seen.computeIfAbsent(name, absent -> new ArrayList<>())
                    .add(new Seen(ready, processor, resident(process.pid())));
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private static double ready(BufferedReader lines) throws IOException {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher matcher = READY.matcher(line);
            if (matcher.matches()) {
                return Double.parseDouble(matcher.group(1));
            }
        }
        throw new IOException("the program ended before it was ready");
    }

    /** In megabytes; not a number where the system does not tell. */
    private static double resident(long process) throws IOException {
        Path status = Path.of("/proc", String.valueOf(process), "status");
        if (!Files.exists(status)) {
            return Double.NaN;
        }
        try (Stream<String> lines = Files.lines(status)) {
            return lines.filter(line -> line.startsWith("VmRSS:"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(Double.NaN);
        }
    }

    private void report() {
        Seen bare = median(BARE);
        System.out.printf("%-28s %9s %6s %9s %6s %9s %6s%n", "", "ready ms", "ratio", "cpu ms", "ratio", "MB", "ratio");
        for (String name : seen.keySet()) {
            Seen found = median(name);
            System.out.printf(
                    "%-28s %9.0f %6.2f %9.0f %6.2f %9.0f %6.2f%n",
                    name,
                    found.milliseconds(),
                    found.milliseconds() / bare.milliseconds(),
                    found.processor(),
                    found.processor() / bare.processor(),
                    found.megabytes(),
                    found.megabytes() / bare.megabytes());
        }
    }

    private Seen median(String name) {
        return new Seen(
                median(seen.get(name).stream().mapToDouble(Seen::milliseconds).toArray()),
                median(seen.get(name).stream().mapToDouble(Seen::processor).toArray()),
                median(seen.get(name).stream().mapToDouble(Seen::megabytes).toArray()));
    }

    private static double median(double... values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }
}
