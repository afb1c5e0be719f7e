package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
    @TempDir
    Path folder;

    @Test
    void helpListsTheVerbsAndEndsWell() {
        CommandRun run = CommandRun.of("--help");
        assertEquals(ExitStatus.FINE, run.status());
        assertTrue(run.out().contains("roundwright"));
    }

    @Test
    void anUnknownVerbIsWrongUsage() {
        CommandRun run = CommandRun.of("crochet");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("crochet"));
        assertFalse(run.err().contains("Exception"));
    }

    @Test
    void noVerbSaysWhatToDo() {
        CommandRun run = CommandRun.of();
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("--help"));
    }

    @Test
    void aMissingFileIsNamed() {
        CommandException failure = assertThrows(
                CommandException.Machine.class,
                () -> read(folder.resolve("none.md").toString()));
        assertTrue(failure.getMessage().contains("none.md"));
    }

    @Test
    void aFolderIsNotAFile() {
        assertThrows(CommandException.Machine.class, () -> read(folder.toString()));
    }

    @Test
    void aBinaryFileIsRefusedWithThePlace() throws IOException {
        Path file = Files.write(folder.resolve("a.bin"), new byte[] {'a', 'b', 0, 1});
        CommandException failure = assertThrows(CommandException.Input.class, () -> read(file.toString()));
        assertTrue(failure.getMessage().contains("offset 2"));
    }

    @Test
    void everyUsualEncodingIsRead() throws Exception {
        for (Charset charset :
                new Charset[] {StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252")}) {
            Path file = Files.write(folder.resolve("text"), "2 × café".getBytes(charset));
            assertEquals("2 × café", read(file.toString()).text(), charset.name());
        }
    }

    private static TextSource read(String name) throws CommandException {
        return TextSource.read(name, Terminal.of(System.in, System.out, System.err));
    }
}
