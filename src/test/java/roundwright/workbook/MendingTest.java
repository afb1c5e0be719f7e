package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.Backup;
import roundwright.store.StoreException;

/** A damaged file is set aside as it is, and the teacher goes on with a backup or with what could be read. */
class MendingTest {
    private static final int PAGE = 4096;

    @TempDir
    Path folder;

    private Path file;
    private byte[] damaged;
    private List<String> before;

    private Backup damage() throws StoreException, IOException {
        Backup backup;
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram", "Oda")) {
            for (int round = 1; round <= 60; round++) {
                sketch.count(round % 3, round, 6 * round);
            }
            file = sketch.file;
            before = Content.of(sketch.workbook.view());
            backup = sketch.workbook.backUp();
        }
        damaged = Files.readAllBytes(file);
        Arrays.fill(damaged, damaged.length - 3 * PAGE, damaged.length - 2 * PAGE, (byte) 0x33);
        Files.write(file, damaged);
        assertThrows(StoreException.Damaged.class, this::open);
        return backup;
    }

    @Test
    void whatCanBeReadIsInANewFileAndTheOldOneIsKept() throws StoreException, IOException {
        damage();
        Mending.Mended mended = Mending.rescue(file, Sketch.NOW);
        assertEquals(
                "trial.damaged-2026-02-03T191205.db",
                mended.damaged().getFileName().toString());
        assertArrayEquals(damaged, Files.readAllBytes(mended.damaged()));
        assertTrue(
                mended.told().get(0).startsWith("Saved: 1 course, 1 group"),
                mended.told().toString());
        assertTrue(mended.told().size() > 1, "what was lost is told of: " + mended.told());
        try (Workbook workbook = open()) {
            assertEquals("Acorn", workbook.view().courses().get(0).name());
        }
        assertEquals(List.of(), passing());
    }

    @Test
    void theNewestWholeBackupCanTakeItsPlace() throws StoreException, IOException {
        Backup backup = damage();
        byte[] bytes = Files.readAllBytes(backup.file());
        Path newer = backup.file()
                .resolveSibling(backup.file().getFileName().toString().replaceAll("T\\d{6}", "T235959"));
        Arrays.fill(bytes, PAGE, 4 * PAGE, (byte) 1);
        Files.write(newer, bytes);
        Backup found = Mending.newestGood(file, folder.resolve("backups")).orElseThrow();
        assertEquals(backup.file(), found.file(), "the newer one is broken");
        Mending.Mended mended = Mending.fromBackup(file, found.file(), Sketch.NOW);
        assertArrayEquals(damaged, Files.readAllBytes(mended.damaged()));
        try (Workbook workbook = open()) {
            assertEquals(before, Content.of(workbook.view()));
        }
        assertEquals(List.of(), passing());
    }

    @Test
    void aBackupThatIsNoneLeavesEverythingAsItWas() throws StoreException, IOException {
        damage();
        Path text = Files.writeString(folder.resolve("text.db"), "no backup");
        assertThrows(StoreException.class, () -> Mending.fromBackup(file, text, Sketch.NOW));
        assertArrayEquals(damaged, Files.readAllBytes(file));
        assertEquals(List.of(), passing());
    }

    private List<Path> passing() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(path -> path.toString().contains(".new")).toList();
        }
    }

    private Workbook open() throws StoreException {
        return Workbook.open(file, folder.resolve("backups"), Clock.fixed(Sketch.NOW, ZoneOffset.UTC));
    }
}
