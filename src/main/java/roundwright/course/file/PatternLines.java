package roundwright.course.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.notation.Problem;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartText;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.SourceLine;
import roundwright.pattern.Verdict;
import roundwright.pattern.check.PatternChecks;

/** Takes the pattern out of the sections of its parts, and brings the problems of its lines to their places in the file. */
final class PatternLines {
    private final Problems problems;
    private final List<PartPlace> places = new ArrayList<>();

    PatternLines(List<Section> sections, Problems problems) {
        this.problems = problems;
        Map<String, Integer> names = new HashMap<>();
        for (Section section : sections) {
            String name = name(section, names);
            List<Written> lines = section.entries().stream()
                    .map(Entry::written)
                    .filter(written -> !written.isBlank())
                    .toList();
            if (lines.isEmpty()) {
                problems.warning("part-empty", section.heading(), name);
            }
            section.passedOver().forEach(span -> passedOver(span));
            places.add(new PartPlace(name, section, lines));
        }
    }

    private void passedOver(Span span) {
        problems.remark("passed-over", span);
    }

    /** Parts are told apart by their names, so one that has none, or another's, is given one. */
    private String name(Section section, Map<String, Integer> names) {
        String written = section.title().text();
        if (written.isBlank()) {
            problems.error("part-unnamed", section.heading());
        }
        String base = written.isBlank() ? "Part" : written;
        String name = base;
        while (names.containsKey(name)) {
            name = base + " " + names.merge(base, 1, Integer::sum);
        }
        names.put(name, 1);
        if (!name.equals(written) && !written.isBlank()) {
            problems.error("part-repeated", section.heading(), written, name);
        }
        return name;
    }

    List<PartPlace> places() {
        return places;
    }

    Pattern read(Optional<Terms> terms) {
        List<PartText> texts = places.stream().map(PatternLines::text).toList();
        Pattern pattern = PatternReader.read(terms, texts);
        PatternChecks checks = PatternChecks.of(pattern);
        for (int index = 0; index < places.size(); index++) {
            report(places.get(index), pattern.parts().get(index), checks);
        }
        return pattern;
    }

    private static PartText text(PartPlace place) {
        List<SourceLine> lines = place.lines().stream()
                .map(line -> new SourceLine(line.text(), line.at()))
                .toList();
        return new PartText(place.name(), lines);
    }

    private void report(PartPlace place, Part part, PatternChecks checks) {
        for (int index = 0; index < place.lines().size(); index++) {
            Written written = place.lines().get(index);
            Line line = part.lines().get(index);
            if (line.verdict() == Verdict.NOT_UNDERSTOOD && line.problems().isEmpty()) {
                problems.warning("line-not-understood", written.span());
            }
            for (Problem problem : checks.problems(line)) {
                Span at = written.place(problem.span());
                problems.add(
                        new Problem(problem.severity(), problem.key(), at, problem.message(), problem.suggestions()),
                        written.span());
            }
        }
    }
}
