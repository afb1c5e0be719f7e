package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NativeLibraryTest {
    private static final String PATH = "org.sqlite.lib.path";
    private static final String NAME = "org.sqlite.lib.name";

    @TempDir
    private Path home;

    @BeforeEach
    @AfterEach
    void forget() {
        System.clearProperty(PATH);
        System.clearProperty(NAME);
    }

    private Path kept() {
        return Path.of(System.getProperty(PATH), System.getProperty(NAME));
    }

    @Test
    void theLibraryIsUnpackedOnceAndWhole() throws IOException {
        NativeLibrary.keepIn(home.resolve("cache"));
        Path library = kept();
        assertTrue(library.startsWith(home.resolve("cache")));
        assertTrue(Files.size(library) > 500_000, "only " + Files.size(library) + " bytes");
        try (var beside = Files.list(library.getParent())) {
            assertEquals(List.of(library), beside.toList());
        }
        FileTime longAgo = FileTime.fromMillis(0);
        Files.setLastModifiedTime(library, longAgo);
        NativeLibrary.keepIn(home.resolve("cache"));
        assertEquals(longAgo, Files.getLastModifiedTime(kept()));
    }

    @Test
    void whereNothingCanBeKeptTheDriverDoesAsItAlwaysDid() throws IOException {
        Path file = Files.writeString(home.resolve("cache"), "no folder");
        NativeLibrary.keepIn(file);
        assertNull(System.getProperty(PATH));
        assertFalse(Files.isDirectory(file));
    }
}
