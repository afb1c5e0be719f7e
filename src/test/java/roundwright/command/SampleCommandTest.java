package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.StoreException;
import roundwright.workbook.GroupView;
import roundwright.workbook.Workbook;

class SampleCommandTest {
    private static final Path COURSE = Path.of("lessons/harbour-light.md");

    @TempDir
    Path folder;

    private CommandRun sample(String file, String students, String seed) {
        return CommandRun.of(
                "sample",
                "--students",
                students,
                "--seed",
                seed,
                "--into",
                folder.resolve(file).toString(),
                COURSE.toString());
    }

    private List<GroupView> groups(String file) throws StoreException {
        try (Workbook workbook = Workbook.open(folder.resolve(file), folder, Clock.systemUTC())) {
            return List.copyOf(workbook.view().groups());
        }
    }

    @Test
    void theSameSeedMakesTheSameCounts() throws StoreException {
        assertEquals(ExitStatus.FINE, sample("a.db", "40", "3").status());
        assertEquals(ExitStatus.FINE, sample("b.db", "40", "3").status());
        List<GroupView> first = groups("a.db");
        assertEquals(40, first.get(0).students().size());
        assertTrue(first.get(0).reports().size() > 200);
        assertEquals(counts(first.get(0)), counts(groups("b.db").get(0)));
    }

    private static List<String> counts(GroupView group) {
        return group.reports().stream()
                .map(report -> report.part() + report.round() + report.kind() + report.count())
                .toList();
    }

    @Test
    void aGroupIsAddedToAFileThatIsThere() throws StoreException {
        sample("c.db", "5", "1");
        assertEquals(ExitStatus.FINE, sample("c.db", "6", "2").status());
        assertEquals(2, groups("c.db").size());
    }

    @Test
    void whatCannotBeMadeIsSaidInWords() throws Exception {
        assertEquals(ExitStatus.WRONG_USAGE, sample("d.db", "0", "1").status());
        Files.writeString(folder.resolve("e.db"), "no database");
        CommandRun run = sample("e.db", "5", "1");
        assertEquals(ExitStatus.MACHINE_FAILED, run.status());
        assertTrue(!run.err().isBlank() && !run.err().contains("Exception"), run.err());
    }
}
