package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.Backup;
import roundwright.store.StoreException;

/** Dated copies of a file: when they are made, which stay, what is in them, and how the file goes back to one. */
class BackupTest {
    @TempDir
    Path folder;

    @Test
    void aCopyIsMadeWhenTheLastIsOlderThanADay() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            assertTrue(sketch.workbook.backUpIfDue().isPresent());
            assertTrue(sketch.workbook.backUpIfDue().isEmpty());
        }
        assertEquals(Optional.empty(), at(Sketch.NOW.plus(Duration.ofHours(23))));
        assertTrue(at(Sketch.NOW.plus(Duration.ofHours(25))).isPresent());
        assertEquals(2, copies().size());
    }

    @Test
    void anEmptyFileNeedsNoCopy() throws StoreException {
        Path file = folder.resolve("empty.db");
        try (Workbook workbook = Workbook.create(file, folder.resolve("backups"), Clock.systemUTC())) {
            assertEquals(Optional.empty(), workbook.backUpIfDue());
        }
        assertFalse(Files.exists(folder.resolve("backups")));
    }

    @Test
    void aClockThatWasSetBackDoesNotKeepCopiesFromBeingMade() throws StoreException {
        new Sketch(folder, "Ines").close();
        assertTrue(at(Instant.parse("2031-01-01T00:00:00Z")).isPresent());
        assertTrue(at(Sketch.NOW).isPresent(), "a copy from the future is no copy of today");
        assertEquals(Optional.empty(), at(Sketch.NOW.plus(Duration.ofHours(1))));
    }

    @Test
    void copiesAreThinnedAndStrangeFilesLeftAlone() throws StoreException, IOException {
        new Sketch(folder, "Ines").close();
        Files.createDirectories(folder.resolve("backups"));
        Path strange = Files.writeString(folder.resolve("backups/holiday.db"), "not ours");
        for (int day = 0; day < 60; day++) {
            at(Sketch.NOW.plus(Duration.ofDays(day)));
        }
        // 7 days, of which one is the week's and one the month's newest, 8 weeks and 3 months, some of them the same
        int copies = copies().size();
        assertTrue(copies >= 14 && copies <= 18, copies + " copies");
        assertTrue(Files.exists(strange));
    }

    @Test
    void twoFilesOfOneNameKeepTheirCopiesApart() throws StoreException, IOException {
        Path backups = folder.resolve("backups");
        for (String name : List.of("one", "two")) {
            Path file = Files.createDirectory(folder.resolve(name)).resolve("courses.db");
            try (Workbook workbook = Workbook.create(file, backups, clock(Sketch.NOW))) {
                workbook.apply(new CourseEdit.AddCourse(workbook.newCourse(), name, "# " + name));
                workbook.backUp();
                assertEquals(1, workbook.backups().size());
            }
        }
    }

    @Test
    void theFileAndItsCopiesAreForTheOwnerAlone() throws StoreException, IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            Backup made = sketch.workbook.backUp();
            assertEquals("rw-------", permissions(made.file()));
            assertEquals("rwx------", permissions(made.file().getParent()));
            try (Stream<Path> paths = Files.list(folder)) {
                for (Path path : paths.filter(Files::isRegularFile).toList()) {
                    assertEquals("rw-------", permissions(path), path.toString());
                }
            }
        }
        Files.setPosixFilePermissions(folder.resolve("trial.db"), PosixFilePermissions.fromString("rw-rw-r--"));
        at(Sketch.NOW);
        assertEquals("rw-------", permissions(folder.resolve("trial.db")), "one that came from elsewhere is closed");
    }

    @Test
    void restoringGoesBackAndKeepsWhatWasThere() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            sketch.count(0, 1, 6);
            List<String> before = Content.of(sketch.workbook.view());
            Backup backup = sketch.workbook.backUp();
            sketch.count(0, 2, 12);
            sketch.workbook.apply(new StudentEdit.RemoveStudent(sketch.group, sketch.students.get(1)));
            sketch.workbook.apply(new CourseEdit.AddCourse(sketch.workbook.newCourse(), "Pebble", "# Pebble"));
            List<String> after = Content.of(sketch.workbook.view());

            Difference difference = sketch.workbook.compareWith(backup.file());
            assertEquals(List.of("Bram"), difference.studentsBack());
            assertEquals(List.of("Pebble"), difference.coursesLost());
            assertEquals(new Difference.Tally(0, 1), difference.counts());
            assertEquals(after, Content.of(sketch.workbook.view()), "looking changes nothing");

            Backup kept = sketch.workbook.restore(backup.file());
            assertEquals(before, Content.of(sketch.workbook.view()));
            assertTrue(sketch.workbook.undoName().isEmpty());
            assertTrue(sketch.workbook.compareWith(backup.file()).nothing());
            sketch.count(1, 1, 7);
            sketch.workbook.restore(kept.file());
            assertEquals(after, Content.of(sketch.workbook.view()));
            assertEquals(after, Content.of(sketch.reopened().view()));
        }
    }

    @Test
    void aBackupThatIsNoneIsRefusedAndNothingChanges() throws StoreException, IOException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            List<String> before = Content.of(sketch.workbook.view());
            Path text = Files.writeString(folder.resolve("text.db"), "not a file of ours");
            byte[] bytes = Files.readAllBytes(sketch.workbook.backUp().file());
            java.util.Arrays.fill(bytes, 5000, 9000, (byte) 7);
            Path broken = Files.write(folder.resolve("broken.db"), bytes);
            assertThrows(StoreException.Foreign.class, () -> sketch.workbook.restore(text));
            StoreException damaged = assertThrows(StoreException.class, () -> sketch.workbook.restore(broken));
            assertTrue(damaged.getMessage().contains("broken.db"), damaged.getMessage());
            assertThrows(StoreException.Failed.class, () -> sketch.workbook.restore(sketch.file));
            assertThrows(StoreException.Missing.class, () -> sketch.workbook.restore(folder.resolve("gone.db")));
            assertEquals(before, Content.of(sketch.workbook.view()));
            sketch.count(0, 1, 6);
            try (Stream<Path> left = Files.list(folder)) {
                assertEquals(
                        List.of(),
                        left.filter(path -> path.toString().contains(".new")).toList());
            }
        }
    }

    private Optional<Backup> at(Instant when) throws StoreException {
        try (Workbook workbook = Workbook.open(folder.resolve("trial.db"), folder.resolve("backups"), clock(when))) {
            return workbook.backUpIfDue();
        }
    }

    private List<Backup> copies() throws StoreException {
        try (Workbook workbook =
                Workbook.open(folder.resolve("trial.db"), folder.resolve("backups"), clock(Sketch.NOW))) {
            return workbook.backups();
        }
    }

    private static Clock clock(Instant when) {
        return Clock.fixed(when, ZoneOffset.UTC);
    }

    private static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
