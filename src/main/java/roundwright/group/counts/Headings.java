package roundwright.group.counts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundwright.group.counts.Column.Kind;
import roundwright.group.messages.Folding;

/** What the words above columns mean. */
final class Headings {
    private static final Map<String, Kind> WORDS = load("/roundwright/counts/headings.txt");

    /** Words that say little where another says more: in "part name" it is the part that counts. */
    private static final Set<String> WEAK = Set.of("name", "names", "time", "r", "m", "at", "class");

    private Headings() {}

    /** What a heading says its column is; empty where it says nothing of the kind. */
    static Optional<Kind> kind(String heading) {
        String plain = Folding.fold(heading.replaceAll("\\([^)]*\\)", " "))
                .replaceAll("[^\\p{L}\\p{N}_]+", " ")
                .strip();
        return Optional.ofNullable(WORDS.get(plain)).or(() -> fromWords(plain));
    }

    /** In several words the last one that means something: a "round note" is a note. */
    private static Optional<Kind> fromWords(String plain) {
        String[] words = plain.split("[ _]");
        boolean hasNumber = plain.matches(".*\\d.*");
        if (words.length < 2 || words.length > 5 || hasNumber) {
            return Optional.empty();
        }
        return last(words, false).or(() -> last(words, true));
    }

    private static Optional<Kind> last(String[] words, boolean weak) {
        return Arrays.stream(words)
                .filter(word -> WORDS.containsKey(word) && WEAK.contains(word) == weak)
                .reduce((earlier, later) -> later)
                .map(WORDS::get);
    }

    private static Map<String, Kind> load(String path) {
        Map<String, Kind> words = new HashMap<>();
        try (InputStream stream = Headings.class.getResourceAsStream(path)) {
            new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split(":", 2))
                    .forEach(line -> Arrays.stream(line[1].split(","))
                            .forEach(word -> words.put(word.strip(), Kind.valueOf(line[0]))));
        } catch (IOException failure) {
            throw new UncheckedIOException(path, failure);
        }
        return Map.copyOf(words);
    }
}
