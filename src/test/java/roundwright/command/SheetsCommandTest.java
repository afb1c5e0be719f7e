package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
    private static final String COURSE = "lessons/window-pot.md";

    @TempDir
    private Path home;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesTheSheetsOfOneLessonAndNamesThem() throws IOException {
        Path out = home.resolve("out");
        CommandRun run = CommandRun.of(
                "sheets",
                COURSE,
                "--out",
                out.toString(),
                "--lesson",
                "1",
                "--large",
                "--left-handed",
                "--paper",
                "letter");
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        List<String> files = List.of(
                "window-pot-lesson-1-student-large-left-handed.pdf",
                "window-pot-lesson-1-teacher.pdf",
                "window-pot-phone.html");
        assertEquals(files, names(out));
        files.forEach(file -> assertTrue(run.out().contains(file), run.out()));
        assertEquals("", run.err());
        assertEquals(
                "%PDF-",
                Files.readString(out.resolve(files.get(1)), java.nio.charset.StandardCharsets.ISO_8859_1)
                        .substring(0, 5));
    }

    @Test
    void aGroupOfNamesAndCountsHasPagesOfItsOwn() throws IOException {
        Path counts = Files.writeString(
                home.resolve("counts.csv"), "student,part,round,count\nInes,Base,1,6\nInes,Base,2,11\n");
        Path students = Files.writeString(home.resolve("names.txt"), "Tuuli\n\nInes\n");
        Path out = home.resolve("out");
        CommandRun run = CommandRun.of(
                "sheets",
                COURSE,
                "--out",
                out.toString(),
                "--only",
                "progress,phone",
                "--students",
                students.toString(),
                "--counts",
                counts.toString());
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertEquals(
                List.of(
                        "window-pot-phone-01-ines.html",
                        "window-pot-phone-02-tuuli.html",
                        "window-pot-progress-01-ines.pdf",
                        "window-pot-progress-02-tuuli.pdf"),
                names(out));
    }

    @Test
    void whatCannotBeDoneIsSaidInOneSentenceAndLeavesNothing() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "");
        CommandRun inTheWay = CommandRun.of("sheets", COURSE, "--out", file.toString(), "--only", "register");
        assertEquals(ExitStatus.MACHINE_FAILED, inTheWay.status());
        assertTrue(inTheWay.err().contains("is not a folder"), inTheWay.err());
        CommandRun noLesson =
                CommandRun.of("sheets", COURSE, "--out", home.resolve("x").toString(), "--lesson", "9");
        assertEquals(ExitStatus.WRONG_USAGE, noLesson.status());
        assertTrue(noLesson.err().contains("1, 2, 3, 4, 5"), noLesson.err());
        CommandRun nothing = CommandRun.withInput(
                "# Empty\n", "sheets", "-", "--out", home.resolve("x").toString());
        assertEquals(ExitStatus.INPUT_HAS_ERRORS, nothing.status());
        CommandRun noPaper =
                CommandRun.of("sheets", COURSE, "--out", home.resolve("x").toString(), "--paper", "a9");
        assertEquals(ExitStatus.WRONG_USAGE, noPaper.status());
        assertFalse(Files.exists(home.resolve("x")));
    }
}
