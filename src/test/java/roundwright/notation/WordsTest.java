package roundwright.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The list of words: what stands in it twice with two meanings would have the first, and nobody would know. */
class WordsTest {
    private static final Path WORDS = Path.of("src/main/resources/roundwright/notation/words.txt");

    @Test
    void noFormHasTwoMeanings() throws IOException {
        Map<String, String> meanings = new HashMap<>();
        List<String> twice = new ArrayList<>();
        for (String line : Files.readAllLines(WORDS)) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String meaning = line.substring(0, line.indexOf(':'));
            for (String form : line.substring(line.indexOf(':') + 1).split("\\|")) {
                String other = meanings.putIfAbsent(form.strip(), meaning);
                if (other != null && !other.equals(meaning)) {
                    twice.add(form.strip() + ": " + other + ", " + meaning);
                }
            }
        }
        assertEquals(List.of(), twice);
        assertTrue(meanings.size() > 1000, meanings.size() + " forms");
    }
}
