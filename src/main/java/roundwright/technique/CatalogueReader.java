package roundwright.technique;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundwright.technique.Technique.Names;
import roundwright.technique.Technique.Needs;

/** Reads the catalogue's file: blocks of {@code key: value} lines, a block a technique. Its head says what each key means. */
final class CatalogueReader {
    private static final String FILE = "/roundwright/technique/techniques.txt";

    private CatalogueReader() {}

    static List<Technique> read() {
        try (InputStream stream = CatalogueReader.class.getResourceAsStream(FILE);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return read(reader.lines().toList());
        } catch (IOException failure) {
            throw new UncheckedIOException("cannot read " + FILE, failure);
        }
    }

    private static List<Technique> read(List<String> lines) {
        List<Technique> techniques = new ArrayList<>();
        Map<String, List<String>> block = new LinkedHashMap<>();
        for (String line : lines) {
            if (line.isBlank() && !block.isEmpty()) {
                techniques.add(technique(block));
                block.clear();
            } else if (!line.isBlank() && !line.startsWith("#")) {
                int colon = line.indexOf(": ");
                block.computeIfAbsent(line.substring(0, colon), key -> new ArrayList<>())
                        .add(line.substring(colon + 2));
            }
        }
        if (!block.isEmpty()) {
            techniques.add(technique(block));
        }
        return techniques;
    }

    private static Technique technique(Map<String, List<String>> block) {
        return new Technique(
                first(block, "technique").orElseThrow(),
                names(block, "uk"),
                names(block, "us"),
                new Needs(list(block, "needs"), list(block, "needs-one-of")),
                Double.parseDouble(first(block, "minutes").orElseThrow()),
                block.containsKey("groundwork") || block.containsKey("comes-with"),
                first(block, "comes-with").map(word -> Occasion.of(word).orElseThrow()),
                first(block, "found"),
                passages(block, "how"),
                passages(block, "right").stream().findFirst(),
                passages(block, "wrong").stream().findFirst());
    }

    private static Names names(Map<String, List<String>> block, String terms) {
        List<String> written = Stream.concat(list(block, "written").stream(), list(block, "written-" + terms).stream())
                .toList();
        return new Names(first(block, terms).orElseThrow(), written);
    }

    private static Optional<String> first(Map<String, List<String>> block, String key) {
        return block.getOrDefault(key, List.of()).stream().findFirst();
    }

    private static List<String> list(Map<String, List<String>> block, String key) {
        return first(block, key).stream()
                .flatMap(value -> Arrays.stream(value.split(",\\s*")))
                .toList();
    }

    private static List<Passage> passages(Map<String, List<String>> block, String key) {
        return block.getOrDefault(key, List.of()).stream().map(Passage::new).toList();
    }
}
