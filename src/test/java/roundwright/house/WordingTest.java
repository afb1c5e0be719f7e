package roundwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import roundwright.wording.Wording;

/**
 * Every sentence that the program asks for is in the catalogue of its room, and every sentence of the catalogue is used.
 *
 * <p>A key is a literal ({@code WORDS.say("used-too-many", …)}), or begins with a literal that ends in a full stop
 * ({@code WORDS.say("kind." + kind.word())}).
 */
class WordingTest {
    private static final Path CATALOGUE = Path.of("src/main/resources/roundwright/wording");
    private static final Path SOURCES = Path.of("src/main/java/roundwright");
    private static final Pattern ASKED = Pattern.compile("\\bsay\\(\\s*\"([^\"]+)\"\\s*([+]?)");

    @Test
    void everyKeyAskedForExists() throws IOException {
        List<String> missing = new ArrayList<>();
        for (Map.Entry<Path, String> source : sources().entrySet()) {
            String room = room(SOURCES.relativize(source.getKey()));
            Matcher asked = ASKED.matcher(source.getValue());
            while (asked.find()) {
                boolean built = !asked.group(2).isEmpty();
                if (!found(room, asked.group(1), built)) {
                    missing.add(source.getKey() + ": " + asked.group(1));
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    /** The class that starts the program stands outside the rooms and speaks with the words of the commands. */
    private static String room(Path source) {
        return source.getNameCount() == 1 ? "command" : source.getName(0).toString();
    }

    private static boolean found(String room, String key, boolean built) {
        if (!Files.exists(CATALOGUE.resolve(room + ".properties"))) {
            return false;
        }
        Wording wording = Wording.of(room);
        return built ? wording.keys().stream().anyMatch(other -> other.startsWith(key)) : wording.has(key);
    }

    @Test
    void everyKeyIsUsed() throws IOException {
        String all = String.join("\n", sources().values());
        List<String> unused = new ArrayList<>();
        for (String room : rooms()) {
            for (String key : Wording.of(room).keys()) {
                String prefix = key.contains(".") ? key.substring(0, key.indexOf('.') + 1) : key;
                if (!all.contains('"' + key + '"') && !all.contains('"' + prefix + '"')) {
                    unused.add(room + ": " + key);
                }
            }
        }
        assertEquals(List.of(), unused);
    }

    private static List<String> rooms() throws IOException {
        if (!Files.exists(CATALOGUE)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(CATALOGUE)) {
            return files.map(path -> path.getFileName().toString().replace(".properties", ""))
                    .sorted()
                    .toList();
        }
    }

    private static Map<Path, String> sources() throws IOException {
        try (Stream<Path> walk = Files.walk(SOURCES)) {
            return walk.filter(path -> path.toString().endsWith(".java"))
                    .collect(Collectors.toMap(path -> path, WordingTest::read, (left, right) -> left, TreeMap::new));
        }
    }

    private static String read(Path path) {
        try {
            return Files.readString(path).replaceAll("(?m)^\\s*(\\*|/\\*\\*).*$", "");
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
