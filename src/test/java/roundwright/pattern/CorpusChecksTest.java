package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundwright.pattern.check.PatternChecks;

/** The checks beyond one round hold their tongue on pieces that are right. */
class CorpusChecksTest {
    private static final double SPOKEN = 0.002;

    @Test
    void hardlyALineOfARightPieceIsRemarkedOn() {
        int lines = 0;
        List<String> spoken = new ArrayList<>();
        for (Corpus.Writer writer : Corpus.writers("right")) {
            Pattern pattern = PatternReader.readBare(Optional.empty(), writer.text());
            PatternChecks checks = PatternChecks.of(pattern);
            for (Part part : pattern.parts()) {
                for (Line line : part.lines()) {
                    lines++;
                    checks.beyond(line)
                            .forEach(problem -> spoken.add(writer.name() + ": " + line + " " + problem.message()));
                }
            }
        }
        assertTrue(spoken.size() <= SPOKEN * lines, spoken.size() + " of " + lines + "\n" + String.join("\n", spoken));
    }
}
