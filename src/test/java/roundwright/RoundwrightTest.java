package roundwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RoundwrightTest {
    @Test
    void noArgumentOpensTheDesktop() {
        assertTrue(Roundwright.forDesktop().isPresent());
    }

    @Test
    void aFileAndAHomeOpenTheDesktop() {
        var arguments =
                Roundwright.forDesktop("--new-home", "trial", "class.db").orElseThrow();
        assertEquals(Optional.of(Path.of("class.db")), arguments.file());
        assertEquals(Optional.of(Path.of("trial")), arguments.home());
    }

    @Test
    void aSampleMayBeAskedFor() {
        assertTrue(Roundwright.forDesktop("--sample").orElseThrow().sample());
        assertFalse(Roundwright.forDesktop().orElseThrow().sample());
    }

    @Test
    void aVerbIsACommand() {
        assertTrue(Roundwright.forDesktop("rounds", "class.db").isEmpty());
        assertTrue(Roundwright.forDesktop("--help").isEmpty());
    }
}
