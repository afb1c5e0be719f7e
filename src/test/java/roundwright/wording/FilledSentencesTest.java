package roundwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** However a sentence is filled, it comes out as its pattern says. */
class FilledSentencesTest {
    private static final Path CATALOGUE = Path.of("src/main/resources/roundwright/wording");
    private static final int MOST_PLACES = 8;

    @Test
    void everySentenceIsFilledAsItsPatternSays() throws IOException {
        List<Path> files;
        try (var listed = Files.list(CATALOGUE)) {
            files = listed.toList();
        }
        int compared = 0;
        for (Path file : files) {
            Properties sentences = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                sentences.load(reader);
            }
            String room = file.getFileName().toString().replace(".properties", "");
            for (String key : sentences.stringPropertyNames()) {
                compared += compare(room, key, sentences.getProperty(key));
            }
        }
        assertTrue(compared > 1000, "compared only " + compared);
    }

    private static int compare(String room, String key, String sentence) {
        List<Object> arguments = sentence.contains(",choice") || sentence.contains(",number")
                ? List.of(0, 1, 2, 999, -3)
                : List.of(7, -999, "it''s {1} of '{0}'", "$1 \\ 1,200", Path.of("a", "b"), 2.5, 0.125f, 41L);
        for (Object argument : arguments) {
            Object[] everywhere = Collections.nCopies(MOST_PLACES, argument).toArray();
            String asSaid = new MessageFormat(sentence, Locale.UK).format(everywhere);
            assertEquals(asSaid, Wording.of(room).say(key, everywhere), room + " " + key);
        }
        return arguments.size();
    }
}
