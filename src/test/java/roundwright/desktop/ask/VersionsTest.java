package roundwright.desktop.ask;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class VersionsTest {
    @Test
    void theNewestIsTheOneThatIsBuilt() throws IOException {
        String built = Files.readString(Path.of("pom.xml"));
        assertTrue(built.contains("<version>" + Versions.newest() + "</version>\n  <name>Roundwright</name>"));
    }

    @Test
    void everyVersionSaysWhatItBrought() {
        for (String version : Versions.all()) {
            assertFalse(Versions.changes(version).isEmpty());
            Versions.changes(version).forEach(change -> assertTrue(change.endsWith("."), change));
        }
    }
}
