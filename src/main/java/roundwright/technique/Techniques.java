package roundwright.technique;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundwright.notation.Terms;
import roundwright.pattern.Line;

/**
 * The techniques that a course can use: the catalogue, in teaching order, and those that the course defines itself.
 *
 * <p>{@code Techniques.catalogue().find("sc", Terms.US)} is the technique {@code double-crochet}.
 */
public final class Techniques {
    private static final Techniques CATALOGUE = new Techniques(CatalogueReader.read());

    private final Map<String, Technique> byId = new LinkedHashMap<>();
    private final Map<Terms, Map<String, Technique>> byName =
            Map.of(Terms.UK, new LinkedHashMap<>(), Terms.US, new LinkedHashMap<>());
    private final LineUses uses;

    private Techniques(Collection<Technique> techniques) {
        techniques.forEach(technique -> byId.put(technique.id(), technique));
        for (Terms terms : Terms.values()) {
            byId.values().forEach(technique -> name(terms, technique.name(terms), technique));
            byId.values().forEach(technique -> name(terms, technique.id(), technique));
            byId.values()
                    .forEach(technique ->
                            technique.names(terms).written().forEach(written -> name(terms, written, technique)));
        }
        uses = new LineUses(byId.values());
    }

    private void name(Terms terms, String name, Technique technique) {
        byName.get(terms).putIfAbsent(plain(name), technique);
    }

    /** The techniques of the trade that the program knows. */
    public static Techniques catalogue() {
        return CATALOGUE;
    }

    /** These and a course's own; one of the same id stands in for the catalogue's. */
    public Techniques with(List<Technique> own) {
        if (own.isEmpty()) {
            return this;
        }
        Map<String, Technique> all = new LinkedHashMap<>(byId);
        own.forEach(technique -> all.put(technique.id(), technique));
        return new Techniques(all.values());
    }

    /** All of them, in teaching order, a course's own last. */
    public List<Technique> all() {
        return List.copyOf(byId.values());
    }

    public Optional<Technique> get(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The technique that a teacher wrote down, by its name or the ways it is written: first in the given terms, then in the other. */
    public Optional<Technique> find(String written, Terms terms) {
        return Stream.of(terms, terms.other())
                .flatMap(either -> spellings(written)
                        .flatMap(
                                spelling -> Stream.ofNullable(byName.get(either).get(spelling))))
                .findFirst();
    }

    /** The name that was probably meant by one that is not known. */
    public Optional<String> suggest(String written, Terms terms) {
        List<String> names =
                all().stream().map(technique -> technique.name(terms)).toList();
        return DidYouMean.of(written, names)
                .or(() -> DidYouMean.of(written, byName.get(terms).keySet())
                        .map(name -> byName.get(terms).get(name).name(terms)));
    }

    /** Ids of the techniques that a line uses, in teaching order: its stitches, its shaping, and what its words ask for. */
    public List<String> uses(Line line) {
        return uses.of(line);
    }

    private static Stream<String> spellings(String written) {
        String name = plain(written);
        List<String> spellings = new ArrayList<>(List.of(name));
        if (name.endsWith("s")) {
            spellings.add(name.substring(0, name.length() - 1));
        }
        spellings.add(name.replaceFirst("\\s*\\([^)]*\\)", ""));
        spellings.add(name.replaceFirst("^(?:the|a|an|working|work) ", ""));
        spellings.add(name.replaceFirst(" (?:stitch|stitches|technique)$", ""));
        return spellings.stream();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
    }
}
