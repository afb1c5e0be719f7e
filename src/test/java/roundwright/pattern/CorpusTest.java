package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Measures the reader against written rounds whose truth was worked out without it; the report tells every miss. */
class CorpusTest {
    private static final double COUNTS_RIGHT = 0.99;
    private static final double CAUGHT = 0.95;
    private static final double CALLED_WRONG = 0.005;
    private static final double CALLED_WRONG_AMONG_MISTAKES = 0.005;
    private static final double UNREAD_COUNTED = 0;
    private static final double UNSOUND = 0.002;
    private static final CorpusScore RIGHT = new CorpusScore();
    private static final CorpusScore MISTAKES = new CorpusScore();
    private static final CorpusScore UNREAD = new CorpusScore();

    @BeforeAll
    static void measure() throws IOException {
        Corpus.writers("right").forEach(writer -> RIGHT.add(writer, read(writer.text())));
        Corpus.writers("mistakes").forEach(writer -> MISTAKES.add(writer, read(writer.text())));
        Corpus.writers("not-understood").forEach(writer -> UNREAD.add(writer, read(writer.text())));
        Path report = Path.of("target/corpus-report.txt");
        Files.createDirectories(report.getParent());
        Files.writeString(
                report,
                RIGHT.report("right lines") + MISTAKES.report("planted mistakes") + UNREAD.report("unreadable lines"),
                StandardCharsets.UTF_8);
    }

    static List<Line> read(String text) {
        return PatternReader.readBare(Optional.empty(), text).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
    }

    @Test
    void theCorpusIsLargeEnoughToMeasure() {
        assertTrue(RIGHT.counts.all() >= 1000, "only " + RIGHT.counts.all() + " right lines");
        assertTrue(MISTAKES.wrongCaught.all() >= 200, "only " + MISTAKES.wrongCaught.all() + " planted mistakes");
        assertTrue(UNREAD.unreadCounted.all() >= 200, "only " + UNREAD.unreadCounted.all() + " unreadable lines");
    }

    @Test
    void takesAndMakesAreRight() {
        assertTrue(RIGHT.counts.share() >= COUNTS_RIGHT, RIGHT.counts::toString);
    }

    @Test
    void plantedMistakesAreCaught() {
        assertTrue(MISTAKES.wrongCaught.share() >= CAUGHT, MISTAKES.wrongCaught::toString);
    }

    @Test
    void hardlyARightLineIsCalledWrong() {
        assertTrue(RIGHT.rightCalledWrong.share() <= CALLED_WRONG, RIGHT.rightCalledWrong::toString);
        assertTrue(
                MISTAKES.rightCalledWrong.share() <= CALLED_WRONG_AMONG_MISTAKES, MISTAKES.rightCalledWrong::toString);
    }

    @Test
    void aLineThatIsNotUnderstoodNeverGetsACount() {
        assertTrue(UNREAD.unreadCounted.share() <= UNREAD_COUNTED, UNREAD.unreadCounted::toString);
        assertTrue(RIGHT.unreadCounted.share() <= UNREAD_COUNTED, RIGHT.unreadCounted::toString);
    }

    @Test
    void aLineThatAddsUpMakesWhatItStates() {
        assertTrue(RIGHT.unsound.share() <= UNSOUND, RIGHT.unsound::toString);
        assertTrue(MISTAKES.unsound.share() <= UNSOUND, MISTAKES.unsound::toString);
    }
}
