package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
    @TempDir
    private Path folder;

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static final String RIGHT = """
            # Bell

            - terms: UK
            - hook: 4 mm
            - yarn: aran, 10 g red
            - tension: 18 stitches and 20 rounds to 10 cm
            - session: 90 minutes
            - pace: 7 stitches a minute

            ## Part: Bell

            - Rnd 1: 6 dc in magic ring (6)
            - Rnd 2: inc x 6 (12)

            ## Lesson 1: Ring

            - rounds: Bell 1-2
            - new: double crochet, magic ring, increase
            """;

    @Test
    void theSampleCoursesHaveNothingToReport() {
        CommandRun run =
                CommandRun.of("check", "lessons/harbour-light.md", "lessons/pocket-planet.md", "lessons/window-pot.md");
        assertEquals(new CommandRun(ExitStatus.FINE, "", ""), run);
    }

    @Test
    void anErrorIsReportedAtItsPlaceWithWhatToWriteInstead() throws IOException {
        String file = write("bell.md", RIGHT.replace("Bell 1-2", "Bel 1-2"));
        CommandRun run = CommandRun.of("check", file);
        assertEquals(ExitStatus.INPUT_HAS_ERRORS, run.status());
        assertEquals("", run.out());
        assertEquals(
                file + ":17:11: error: There is no part called “Bel”; probably “Bell” is meant.\n"
                        + "    - rounds: Bel 1-2\n"
                        + "              ^^^\n"
                        + "    write: - rounds: Bell 1-2\n",
                run.err().lines().limit(4).map(line -> line + "\n").reduce("", String::concat));
    }

    @Test
    void warningsAndRemarksAreNoErrors() throws IOException {
        CommandRun run = CommandRun.of("check", write("bell.md", RIGHT.replace("- hook: 4 mm\n", "")));
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.err().contains(":1:1: remark: "), run.err());
    }

    @Test
    void aFileThatCannotBeReadDoesNotHideTheOthers() throws IOException {
        String bad = write("bad.md", "no course");
        CommandRun run = CommandRun.of("check", folder.resolve("none.md").toString(), bad);
        assertEquals(ExitStatus.MACHINE_FAILED, run.status());
        assertTrue(run.err().contains("none.md"), run.err());
        assertTrue(run.err().contains("bad.md:1:1: error: "), run.err());
    }

    @Test
    void standardInputIsReadForADash() {
        assertEquals(ExitStatus.FINE, CommandRun.withInput(RIGHT, "check", "-").status());
    }

    @Test
    void nothingToCheckIsWrongUsage() {
        assertEquals(ExitStatus.WRONG_USAGE, CommandRun.of("check").status());
    }

    @Test
    void jsonSaysWhatWasRead() throws IOException {
        String file = write("bell.md", RIGHT.replace("minute\n", "minute\n- odd: x\n"));
        CommandRun run = CommandRun.of("check", "--json", file);
        assertEquals(ExitStatus.FINE, run.status());
        Map<String, Object> course = ReadJson.object(run.out().strip().replaceAll("^\\[|]$", ""));
        assertEquals(
                List.of("file", "name", "terms", "settings", "parts", "lessons", "techniques", "problems"),
                List.copyOf(course.keySet()));
        Map<?, ?> part = first(course.get("parts"));
        Map<?, ?> round = first(part.get("rounds"));
        assertEquals(13.0, round.get("line"));
        assertEquals("Rnd 1: 6 dc in magic ring (6)", round.get("text"));
        assertEquals(List.of(1.0, 1.0), round.get("label"));
        assertEquals(6.0, round.get("makes"));
        assertEquals("adds-up", round.get("verdict"));
        assertEquals(List.of("double-crochet", "magic-ring"), round.get("techniques"));
        Map<?, ?> lesson = first(course.get("lessons"));
        assertEquals(List.of("double-crochet", "magic-ring", "increase"), lesson.get("new"));
        Map<?, ?> problem = first(course.get("problems"));
        assertEquals(9.0, problem.get("line"));
        assertEquals(3.0, problem.get("column"));
        assertEquals("remark", problem.get("severity"));
        String text = Files.readString(Path.of(file));
        int from = ((Double) problem.get("from")).intValue();
        assertEquals("odd", text.substring(from, ((Double) problem.get("to")).intValue()));
        assertEquals(null, problem.get("suggestion"));
    }

    private static Map<?, ?> first(Object list) {
        return (Map<?, ?>) ((List<?>) list).get(0);
    }
}
