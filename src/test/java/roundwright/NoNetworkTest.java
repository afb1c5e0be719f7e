package roundwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing leaves the machine: the verbs run under a tracer, and neither connect to anything nor listen. */
class NoNetworkTest {
    @TempDir
    Path folder;

    @Test
    void noVerbReachesOutOfTheMachine() throws Exception {
        assumeTrue(Traced.possible(), "skipped: there is no tracer that may be used");
        String course = "lessons/window-pot.md";
        String file = folder.resolve("courses.db").toString();
        for (List<String> verb : List.of(
                List.of("check", course),
                List.of("plan", course),
                List.of("sheets", course, "--out", folder.resolve("sheets").toString()),
                List.of("dates", course, "--from", "2026-02-03", "--on", "Tue", "--ics", folder + "/run.ics"),
                List.of("sample", "--students", "4", "--into", file, course),
                List.of("backup", file, "--to", folder.resolve("copies").toString()))) {
            assertEquals(
                    List.of(),
                    Traced.networkCalls(folder, List.of("-Djava.awt.headless=true"), verb.toArray(String[]::new)));
        }
    }

    /** The tracer would see it: the same look at a program that does make a connection. */
    @Test
    void aConnectionWouldBeSeen() throws Exception {
        assumeTrue(Traced.possible(), "skipped: there is no tracer that may be used");
        Path reaching = Files.writeString(folder.resolve("Reaching.java"), """
                public class Reaching {
                    public static void main(String[] none) throws Exception {
                        try {
                            new java.net.Socket("127.0.0.1", 1).close();
                        } catch (java.io.IOException refused) {
                            return;
                        }
                    }
                }
                """);
        Path trace = folder.resolve("trace.txt");
        new ProcessBuilder(
                        "strace",
                        "-f",
                        "-qqq",
                        "-o",
                        trace.toString(),
                        "-e",
                        "trace=%network",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        reaching.toString())
                .start()
                .waitFor();
        assertFalse(Files.readAllLines(trace).stream().noneMatch(Traced::reachesOut));
    }
}
