package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.notation.Terms;

class SentencesTest {
    private static final Sentences UK = new Sentences(Terms.UK);

    private record Case(String name, int[] counts, String sentence) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Case> students() {
        return List.of(
                new Case(
                        "one over",
                        new int[] {6, 12, 18, 24, 25},
                        "One stitch was probably worked twice (80 %). It could also be a miscount (12 %) or an end past the marker (5 %)."),
                new Case("all right", new int[] {6, 12}, "This round was almost certainly worked right (98 %)."),
                new Case(
                        "five in the ring",
                        new int[] {5, 10, 15},
                        "This round was almost certainly worked right; the difference comes from below (97 %)."),
                new Case(
                        "absurd",
                        new int[] {6, 12, 50},
                        "No likely mistake leads to 50 stitches where the line says 18. Count the round again."));
    }

    @ParameterizedTest
    @MethodSource("students")
    void anExplanationReadsAsASentence(Case student) {
        List<Explanation> explanations = Trials.counts(student.counts());
        Explanation last = explanations.get(explanations.size() - 1);
        assertEquals(student.sentence(), UK.causes(last, last.soFar()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void noKindIsSpokenOfByItsIdentifier(Kind kind) {
        for (Terms terms : Terms.values()) {
            Sentences sentences = new Sentences(terms);
            for (String words : List.of(sentences.noun(Kinds.of(kind)), sentences.habit(kind))) {
                assertFalse(words.contains("-"), words);
                assertFalse(words.contains("{"), words);
            }
        }
    }

    @Test
    void aPlainStitchIsNamedInTheTermsOfTheCourse() {
        Kinds left = Kinds.of(Kind.SHAPING_LEFT_OUT);
        assertTrue(UK.noun(left).contains("double crochet"));
        assertTrue(new Sentences(Terms.US).noun(left).contains("single crochet"));
    }

    @Test
    void severalMistakesAreCounted() {
        assertEquals(
                "two missed increases and a miscount",
                UK.noun(Kinds.of(Kind.INCREASE_MISSED, Kind.INCREASE_MISSED, Kind.MISCOUNTED)));
    }

    @Test
    void theArithmeticGivesThePercentageBack() {
        Explanation off = Trials.counts(6, 12, 18, 24, 25).get(4);
        List<String> lines = UK.arithmetic(off.soFar());
        assertTrue(lines.get(0).contains("25"), lines.get(0));
        assertTrue(
                lines.get(1).contains("a stitch worked twice") && lines.get(1).endsWith("80 %."), lines.get(1));
    }
}
