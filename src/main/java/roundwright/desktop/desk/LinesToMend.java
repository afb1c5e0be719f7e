package roundwright.desktop.desk;

import java.util.List;
import java.util.Optional;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.pattern.Line;
import roundwright.pattern.Pattern;
import roundwright.wording.Wording;

/** The lines of a pattern that cannot stay as they are. */
public final class LinesToMend {
    private static final Wording WORDS = Wording.of("desktop");

    private LinesToMend() {}

    /** How many there are, and what is the matter with the first; empty where all adds up. */
    public static Optional<String> told(Pattern pattern) {
        List<Line> wrong = pattern.parts().stream()
                .flatMap(part -> part.lines().stream())
                .filter(line -> grave(line).isPresent())
                .toList();
        return wrong.stream()
                .findFirst()
                .map(first -> WORDS.say(
                        "lines-to-mend",
                        wrong.size(),
                        first.text().strip(),
                        grave(first).orElseThrow().message()));
    }

    private static Optional<Problem> grave(Line line) {
        return line.problems().stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .findFirst();
    }
}
