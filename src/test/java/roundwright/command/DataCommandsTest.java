package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.StoreException;
import roundwright.workbook.GroupView;
import roundwright.workbook.Workbook;

/** The verbs for a teacher's file: copies and back, what is held about a student, and its end. */
class DataCommandsTest {
    @TempDir
    Path folder;

    private String file;
    private String student;

    @BeforeEach
    void makeAFile() throws StoreException {
        file = folder.resolve("courses.db").toString();
        assertEquals(
                0,
                CommandRun.of("sample", "--students", "5", "--into", file, "lessons/harbour-light.md")
                        .status());
        student = group(file).students().get(2).name();
    }

    private static GroupView group(String file) throws StoreException {
        Path path = Path.of(file);
        try (Workbook workbook = Workbook.open(path, path.resolveSibling("backups"), Clock.systemUTC())) {
            return workbook.view().groups().get(0);
        }
    }

    @Test
    void aCopyIsMadeShownAndGoneBackTo() throws StoreException {
        String copies = folder.resolve("copies").toString();
        CommandRun made = CommandRun.of("backup", file, "--to", copies);
        assertEquals(0, made.status(), made.err());
        String copy = made.out().strip();
        assertTrue(Files.exists(Path.of(copy)), copy);
        assertEquals(0, CommandRun.of("erase", file, "--student", student).status());
        CommandRun preview = CommandRun.of("restore", copy, "--into", file, "--preview");
        assertEquals(0, preview.status(), preview.err());
        assertTrue(preview.out().contains("Students who come back: " + student), preview.out());
        assertEquals(4, group(file).students().size());
        CommandRun restored = CommandRun.of("restore", copy, "--into", file);
        assertEquals(0, restored.status(), restored.err());
        assertEquals(5, group(file).students().size());
        String other = folder.resolve("other.db").toString();
        assertEquals(0, CommandRun.of("restore", copy, "--into", other).status());
        assertEquals(5, group(other).students().size());
    }

    @Test
    void everythingHeldIsWrittenAsTextAndAsJson() throws IOException {
        CommandRun run = CommandRun.of("export", file, "--student", student.toUpperCase(), "--out", folder.toString());
        assertEquals(0, run.status(), run.err());
        List<String> written = run.out().lines().toList();
        assertTrue(Files.readString(Path.of(written.get(0))).contains("Name: " + student));
        Map<?, ?> json = ReadJson.object(Files.readString(Path.of(written.get(1))));
        assertEquals(student, json.get("name"));
    }

    @Test
    void anErasedStudentIsInNoFile() throws IOException {
        String copies = folder.resolve("backups").toString();
        CommandRun.of("backup", file, "--to", copies);
        CommandRun run = CommandRun.of("erase", file, "--student", student, "--backups", copies);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Backups from which they were erased: 1."), run.out());
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String bytes = new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
                assertFalse(bytes.contains(student), path.toString());
            }
        }
        CommandRun again = CommandRun.of("erase", file, "--student", student);
        assertEquals(1, again.status());
        assertTrue(again.err().contains("no student called " + student), again.err());
    }

    @Test
    void aCopyWithInitialsIsNewAndNamesNobody() throws IOException {
        String copy = folder.resolve("share.db").toString();
        assertEquals(0, CommandRun.of("initials", file, "--into", copy).status());
        assertFalse(Files.readString(Path.of(copy), StandardCharsets.ISO_8859_1).contains(student));
        CommandRun again = CommandRun.of("initials", file, "--into", copy);
        assertEquals(3, again.status());
        assertTrue(again.err().contains("already a file"), again.err());
    }

    @Test
    void whatCanBeReadOfADamagedFileIsSavedAndTheRestTold() throws IOException, StoreException {
        byte[] bytes = Files.readAllBytes(Path.of(file));
        Arrays.fill(bytes, bytes.length - 8192, bytes.length - 4096, (byte) 9);
        Path damaged = Files.write(folder.resolve("damaged.db"), bytes);
        assertEquals(
                3,
                CommandRun.of("backup", damaged.toString(), "--to", folder.toString())
                        .status());
        String saved = folder.resolve("saved.db").toString();
        CommandRun run = CommandRun.of("rescue", damaged.toString(), "--into", saved);
        assertEquals(1, run.status(), run.err());
        assertTrue(run.out().startsWith("Saved: 1 course, 1 group, 5 students, 5 places in groups"), run.out());
        assertEquals(5, group(saved).students().size());
    }

    @Test
    void whatIsNoFileOfOursIsRefusedInASentence() throws IOException {
        Path text = Files.writeString(folder.resolve("text.db"), "# Acorn\n");
        for (List<String> verb : List.of(
                List.of("backup", text.toString(), "--to", folder.toString()),
                List.of("restore", text.toString(), "--into", file),
                List.of("erase", text.toString(), "--student", "Ines"),
                List.of("export", folder.resolve("none.db").toString(), "--student", "Ines", "--out", "x"))) {
            CommandRun run = CommandRun.of(verb.toArray(String[]::new));
            assertEquals(3, run.status(), verb.toString());
            assertEquals(1, run.err().lines().count(), run.err());
        }
    }
}
