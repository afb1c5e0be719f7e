package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder holds all of the new sheets or none of them. */
class SheetFolderTest {
    @TempDir
    private Path home;

    private static Sheet sheet(String file, String text) {
        return new Sheet(file, file, SheetKind.OVERVIEW, text::getBytes);
    }

    private static List<Sheet> sheets(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> sheet("s" + i + ".pdf", "new"))
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesIntoAFolderThatIsNotThereYetAndLeavesOtherFilesAlone() throws Exception {
        Path folder = home.resolve("a/b");
        assertEquals(
                3,
                new SheetFolder(folder).write(sheets(3), SheetProgress.SILENT).size());
        Files.writeString(folder.resolve("mine.txt"), "mine");
        new SheetFolder(folder).write(sheets(2), SheetProgress.SILENT);
        assertEquals(List.of("mine.txt", "s0.pdf", "s1.pdf", "s2.pdf"), names(folder));
    }

    @Test
    void stoppedItLeavesNothing() throws Exception {
        Path folder = home.resolve("new");
        List<Path> written = new SheetFolder(folder).write(sheets(40), (done, of, last) -> done < 3);
        assertEquals(List.of(), written);
        assertFalse(Files.exists(folder));
    }

    @Test
    void aSheetThatFailsLeavesTheOldOnesAsTheyWere() throws Exception {
        Files.writeString(home.resolve("s0.pdf"), "old");
        Sheet broken = new Sheet("broken.pdf", "", SheetKind.OVERVIEW, () -> {
            throw new IllegalArgumentException("cannot");
        });
        List<Sheet> sheets =
                Stream.concat(sheets(5).stream(), Stream.of(broken)).toList();
        assertThrows(IllegalStateException.class, () -> new SheetFolder(home).write(sheets, SheetProgress.SILENT));
        assertEquals(List.of("s0.pdf"), names(home));
        assertEquals("old", Files.readString(home.resolve("s0.pdf")));
    }

    @Test
    void aNameThatIsTakenByAFolderStopsAllOfThem() throws Exception {
        Files.createDirectories(home.resolve("s1.pdf"));
        CannotWrite refused =
                assertThrows(CannotWrite.class, () -> new SheetFolder(home).write(sheets(3), SheetProgress.SILENT));
        assertTrue(refused.getMessage().contains("s1.pdf"), refused.getMessage());
        assertEquals(List.of("s1.pdf"), names(home));
    }

    @Test
    void aFileInTheWayIsNamed() throws Exception {
        Path file = Files.writeString(home.resolve("file"), "");
        for (Path folder : List.of(file, file.resolve("below"))) {
            CannotWrite refused = assertThrows(
                    CannotWrite.class, () -> new SheetFolder(folder).write(sheets(1), SheetProgress.SILENT));
            assertTrue(refused.getMessage().contains("Nothing was written"), refused.getMessage());
        }
    }

    /** On a disk of a few hundred kilobytes, where one is given: {@code -Dsmall.disk=FOLDER}. */
    @Test
    void aFullDiskLeavesTheOldSheets() throws Exception {
        String small = System.getProperty("small.disk", "");
        assumeTrue(!small.isEmpty(), "no small disk given");
        Path folder = Files.createTempDirectory(Path.of(small), "sheets");
        Files.writeString(folder.resolve("s0.pdf"), "old");
        List<Sheet> large = List.of(sheet("s0.pdf", "new"), sheet("s1.pdf", "x".repeat(1 << 24)));
        CannotWrite full =
                assertThrows(CannotWrite.class, () -> new SheetFolder(folder).write(large, SheetProgress.SILENT));
        assertTrue(full.getMessage().contains("Nothing half-written"), full.getMessage());
        assertEquals(List.of("s0.pdf"), names(folder));
        assertEquals("old", Files.readString(folder.resolve("s0.pdf")));
    }
}
