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
    private static final Path FOLDER = Path.of("src/main/resources/roundwright/notation");

    private final Map<String, String> meanings = new HashMap<>();
    private final List<String> twice = new ArrayList<>();

    @Test
    void noFormHasTwoMeanings() throws IOException {
        read("words.txt");
        assertEquals(List.of(), twice);
        assertTrue(meanings.size() > 1000, meanings.size() + " forms");
    }

    @Test
    void noWordOfAnotherLanguageIsOneOfTheTradeButThoseThatAreMarked() throws IOException {
        read("words.txt");
        int trade = meanings.size();
        read("kept.txt");
        assertEquals(List.of(), twice);
        assertTrue(meanings.size() > trade + 200, meanings.size() - trade + " forms");
    }

    private void read(String name) throws IOException {
        for (String line : Files.readAllLines(FOLDER.resolve(name))) {
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
    }
}
