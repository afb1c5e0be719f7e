package roundwright.course.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.notation.Severity;
import roundwright.notation.Terms;
import roundwright.technique.Passage;
import roundwright.technique.Technique;
import roundwright.technique.Technique.Names;
import roundwright.technique.Technique.Needs;
import roundwright.technique.Techniques;

/** Reads the techniques that a file defines for itself. Each may need those of the catalogue and those defined above it. */
final class TechniqueReader {
    /** Teaching minutes of a technique that does not say. */
    private static final int USUAL_MINUTES = 8;

    private final Terms terms;
    private final Problems problems;
    private final List<Technique> own = new ArrayList<>();

    TechniqueReader(Terms terms, Problems problems) {
        this.terms = terms;
        this.problems = problems;
    }

    List<Technique> read(List<Section> sections) {
        for (Section section : sections) {
            if (section.title().isBlank()) {
                problems.error("technique-unnamed", section.heading());
            } else if (own.stream()
                    .anyMatch(other -> other.id().equals(id(section.title().text())))) {
                problems.error(
                        "technique-repeated", section.heading(), section.title().text());
            } else {
                Keys.TECHNIQUE.check(section, problems);
                own.add(technique(section));
            }
        }
        return own;
    }

    private Technique technique(Section section) {
        String name = section.title().text();
        List<String> written =
                values(section, "written").stream().map(Written::text).toList();
        Names names = new Names(name, written);
        return new Technique(
                id(name),
                names,
                names,
                new Needs(needs(section), List.of()),
                minutes(section),
                false,
                Optional.empty(),
                Optional.of(found(name, written)),
                Stream.concat(paragraphs(section), texts(section, "how"))
                        .map(TechniqueReader::passage)
                        .toList(),
                texts(section, "right").findFirst().map(TechniqueReader::passage),
                texts(section, "wrong").findFirst().map(TechniqueReader::passage));
    }

    static String id(String name) {
        String id =
                name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "-").replaceAll("^-|-$", "");
        return id.isEmpty() ? "technique" : id;
    }

    /** A brace in a teacher's own words is only a brace. */
    private static Passage passage(String words) {
        return new Passage(words.replace('{', '(').replace('}', ')'));
    }

    private static String found(String name, List<String> written) {
        return Stream.concat(Stream.of(name), written.stream())
                .map(words ->
                        Arrays.stream(words.split("\\s+")).map(Pattern::quote).collect(Collectors.joining("\\s+")))
                .collect(Collectors.joining("|", "(?<![\\p{L}\\d])(?:", ")(?![\\p{L}\\d])"));
    }

    private int minutes(Section section) {
        Optional<Written> value = Values.of(section, "minutes").stream().findFirst();
        OptionalInt minutes =
                value.map(written -> Amounts.minutes(written.text())).orElse(OptionalInt.of(USUAL_MINUTES));
        if (minutes.isEmpty()) {
            problems.error(
                    "session-unreadable",
                    value.orElseThrow().span(),
                    value.get().text());
        }
        return Math.min(minutes.orElse(USUAL_MINUTES), 1000);
    }

    private List<String> needs(Section section) {
        Techniques known = Techniques.catalogue().with(own);
        List<String> ids = new ArrayList<>();
        for (Written need : values(section, "needs")) {
            Optional<Technique> technique = known.find(need.text(), terms);
            if (technique.isEmpty()) {
                Optional<String> near = known.suggest(need.text(), terms);
                problems.mendable(
                        Severity.ERROR,
                        near.isPresent() ? "unknown-technique-near" : "unknown-technique",
                        need.span(),
                        near,
                        need.text(),
                        near.orElse(""));
            }
            technique
                    .map(Technique::id)
                    .filter(id -> !id.equals(id(section.title().text())))
                    .ifPresent(ids::add);
        }
        return ids;
    }

    private static List<Written> values(Section section, String key) {
        return Values.of(section, key).stream()
                .flatMap(value -> value.split().stream())
                .toList();
    }

    private static Stream<String> texts(Section section, String key) {
        return Values.of(section, key).stream().map(Written::text);
    }

    private static Stream<String> paragraphs(Section section) {
        return section.paragraphs().stream();
    }
}
