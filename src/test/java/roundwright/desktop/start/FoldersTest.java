package roundwright.desktop.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.ask.Versions;
import roundwright.desktop.look.Theme;

class FoldersTest {
    private static final Path HOME = Path.of("/home/teacher");

    @Test
    void aNamedHomeHoldsEverything() {
        Folders folders = Folders.under(Path.of("trial"));
        assertEquals(Path.of("trial/settings"), folders.settings());
        assertEquals(Path.of("trial/data/courses.db"), folders.file());
        assertEquals(Path.of("trial/backups"), folders.backups());
    }

    @Test
    void onLinuxTheFreeDesktopsFoldersAreUsed() {
        Folders folders = Folders.usual("Linux", HOME, Map.of("XDG_DATA_HOME", "/data", "XDG_CONFIG_HOME", "relative"));
        assertEquals(Path.of("/data/roundwright/courses.db"), folders.file());
        assertEquals(HOME.resolve(".config/roundwright"), folders.settings());
        assertEquals(Path.of("/data/roundwright/backups"), folders.backups());
        assertEquals(HOME.resolve(".cache/roundwright"), folders.cache());
    }

    @Test
    void elsewhereTheSystemsOwnFoldersAreUsed() {
        assertEquals(
                HOME.resolve("Library/Application Support/Roundwright/courses.db"),
                Folders.usual("Mac OS X", HOME, Map.of()).file());
        assertEquals(
                HOME.resolve("AppData/Local/Roundwright/courses.db"),
                Folders.usual("Windows 11", HOME, Map.of()).file());
    }

    @Test
    void theLookIsRememberedAndRepaired(@TempDir Path folder) throws IOException {
        LookSettings look = new LookSettings(
                Theme.DARK, 1.5f, Optional.of(new Rectangle(10, -20, 900, 700)), Optional.of(Versions.newest()));
        look.write(folder);
        assertEquals(look, LookSettings.read(folder));
        Files.writeString(folder.resolve("look.properties"), "theme=dark\nzoom=9000\nx=1\ny=2\nwidth=3\nheight=oops\n");
        assertEquals(
                new LookSettings(Theme.DARK, 2f, Optional.empty(), Optional.of("0.1.0")), LookSettings.read(folder));
        Files.write(folder.resolve("look.properties"), new byte[] {(byte) 0xff, 0, 7});
        assertEquals(new LookSettings(Theme.LIGHT, 1f, Optional.empty(), Optional.empty()), LookSettings.read(folder));
    }
}
