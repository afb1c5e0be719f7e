package roundwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window opens with a course and a group under a tracer, and reaches nothing but its own screen. */
class NoNetworkWindowTest {
    @TempDir
    Path folder;

    @Test
    void theWindowReachesNothingButItsScreen() throws Exception {
        assumeFalse(GraphicsEnvironment.isHeadless(), "skipped: there is no display to open a window on");
        assumeTrue(Traced.possible(), "skipped: there is no tracer that may be used");
        List<String> calls = Traced.networkCalls(
                folder,
                List.of("-Droundwright.start-only=true"),
                "--sample",
                "--new-home",
                folder.resolve("home").toString());
        assertEquals(List.of(), calls);
    }
}
