package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb {@code dates}, and its file read back. */
class DatesCommandTest {
    private static final String LIGHTHOUSE = "lessons/harbour-light.md";

    @TempDir
    Path folder;

    private CommandRun run(String arguments) {
        String ics = folder.resolve("run.ics").toString();
        return CommandRun.of(("dates " + arguments + " --zone Europe/London --ics " + ics).split(" "));
    }

    private ICalendar calendar() throws IOException {
        return Biweekly.parse(Files.readString(folder.resolve("run.ics"))).first();
    }

    private List<Instant> starts() throws IOException {
        return calendar().getEvents().stream()
                .map(event -> event.getDateStart().getValue().toInstant())
                .toList();
    }

    @Test
    void everyLessonHasItsDate() throws IOException {
        CommandRun run = run(LIGHTHOUSE + " --from 2027-03-01 --on tue --skip 2027-03-09 2027-03-16 --at 18:30");
        assertEquals(0, run.status(), run.err());
        assertEquals(8, calendar().getEvents().size());
        assertEquals(Instant.parse("2027-03-02T18:30:00Z"), starts().get(0));
        assertEquals(Instant.parse("2027-03-23T18:30:00Z"), starts().get(1));
        assertEquals(Instant.parse("2027-03-30T17:30:00Z"), starts().get(2));
        assertTrue(calendar().validate(ICalVersion.V2_0).isEmpty());
        VEvent first = calendar().getEvents().get(0);
        assertTrue(first.getSummary().getValue().startsWith("Harbour light, lesson 1"));
        assertTrue(first.getDescription().getValue().contains("Bring: "), first.toString());
        assertTrue(run.out().startsWith("Tuesday 2 March 2027, 18:30  Harbour light, lesson 1"), run.out());
    }

    @Test
    void theCourseMayStandAfterTheDays() {
        CommandRun run = run("--from 2027-03-01 --on tue,Thursday --skip 2027-03-09 " + LIGHTHOUSE);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Thursday 4 March 2027, 19:00"), run.out());
    }

    @Test
    void aMovedRunKeepsItsEvents() throws IOException {
        run(LIGHTHOUSE + " --from 2027-03-01 --on tue");
        List<String> before = uids();
        run(LIGHTHOUSE + " --from 2027-04-01 --on wed --place loft");
        assertEquals(before, uids());
        assertEquals(1, calendar().getEvents().get(0).getSequence().getValue());
    }

    private List<String> uids() throws IOException {
        return calendar().getEvents().stream()
                .map(event -> event.getUid().getValue())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--from 2027-02-30 --on tue | 2 | not a day of the calendar",
                "--from soon --on tue | 2 | not a day of the calendar",
                "--from 2027-02-03 --on noday | 2 | not a day of the week",
                "--from 2027-02-03 --on t | 2 | not a day of the week",
                "--from 2027-02-03 | 2 | --on",
                "--from 2027-02-03 --on tue --at 25:00 | 2 | not a time of day",
                "--from 2027-02-03 --on tue --zone Narnia | 2 | “Narnia” is not",
                "--from 0027-02-03 --on tue | 1 | between 1970"
            })
    void impossibleDatesAreRefused(String arguments, int status, String words) {
        CommandRun run = run(LIGHTHOUSE + " " + arguments.strip());
        assertEquals(status, run.status(), run.err());
        assertTrue(run.err().contains(words.strip()), run.err());
        assertEquals(0, folder.toFile().list().length);
    }

    @Test
    void whatStandsThereIsNotLost() throws IOException {
        Path file = Files.writeString(folder.resolve("run.ics"), "Shopping: yarn\n");
        CommandRun run = run(LIGHTHOUSE + " --from 2027-03-01 --on tue");
        assertEquals(1, run.status());
        assertTrue(run.err().contains("not a calendar"), run.err());
        assertEquals("Shopping: yarn\n", Files.readString(file));
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        CommandRun run = CommandRun.of(
                "dates", LIGHTHOUSE, "--from", "2027-03-01", "--on", "tue", "--ics", folder + "/no/run.ics");
        assertEquals(3, run.status());
        assertTrue(run.err().contains("no such folder"), run.err());
        CommandRun onto =
                CommandRun.of("dates", LIGHTHOUSE, "--from", "2027-03-01", "--on", "tue", "--ics", folder.toString());
        assertEquals(3, onto.status(), onto.err());
        assertEquals(0, folder.toFile().list().length);
    }

    @Test
    void aCourseWithoutLessonsHasNoDatesYet() {
        CommandRun run = CommandRun.withInput(
                "# Gull\n\n## Part: Body\n\n- Rnd 1: 6 dc in magic ring. (6)\n",
                "dates",
                "-",
                "--from",
                "2027-03-01",
                "--on",
                "tue",
                "--ics",
                folder.resolve("run.ics").toString());
        assertEquals(1, run.status());
        assertTrue(run.err().contains("plan --write"), run.err());
    }
}
