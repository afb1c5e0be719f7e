package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Check;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Rates;

class QuestionTest {
    @Test
    void theGainIsTheDropOfDoubtThatTheAnswerBrings() {
        List<Explanation> explanations = Trials.counts(6, 12, 18, 24, 25);
        Explanation off = explanations.get(4);
        for (Question question : Question.all(off.soFar(), off.shapes(), List.of())) {
            double expected = doubt(off.soFar());
            for (String answer : question.check().answers()) {
                double chance = 0;
                for (Finding.Cause cause : off.soFar().causes()) {
                    chance += cause.probability() * new Check.Answer(question.check(), answer).chance(cause.kinds());
                }
                expected -= chance * doubt(answered(off, question.check(), answer));
            }
            assertEquals(expected, question.gain(), 0.002, question.check().word());
        }
    }

    private static double doubt(Finding finding) {
        return -finding.causes().stream()
                .mapToDouble(cause -> cause.probability() * Math.log(cause.probability()))
                .sum();
    }

    /** The same reports, with the last one's check answered. */
    private static Finding answered(Explanation explanation, Check check, String answer) {
        List<CountReport> reports = new ArrayList<>();
        int[] counts = {6, 12, 18, 24};
        for (int round = 1; round <= counts.length; round++) {
            reports.add(Trials.counted(round, round, counts[round - 1]));
        }
        reports.add(explanation.report().checked(Map.of(check.word(), answer)));
        List<Explanation> all =
                Explanations.of(Trials.BELL, reports, student -> Rates.STORY).of(new StudentId(1));
        return all.get(all.size() - 1).soFar();
    }

    @Test
    void oneTooManyInAPlainRoundAsksForAPair() {
        Explanation off = Trials.counts(6, 12, 18, 24, 25).get(4);
        assertEquals(Check.LOOK_FOR_A_PAIR, off.question().orElseThrow().check());
        assertTrue(off.question().orElseThrow().answers().size() == 2);
    }

    @Test
    void anAnsweredCheckIsNotAskedAgainAndMovesTheExplanation() {
        Explanation off = Trials.counts(6, 12, 18, 24, 25).get(4);
        Finding pair = answered(off, Check.LOOK_FOR_A_PAIR, "yes");
        Finding none = answered(off, Check.LOOK_FOR_A_PAIR, "no");
        Kinds twice = off.soFar().causes().get(0).kinds();
        assertTrue(chance(pair, twice) > off.soFar().causes().get(0).probability());
        assertTrue(chance(none, twice) < off.soFar().causes().get(0).probability());
        assertTrue(Question.all(pair, false, List.of(Check.LOOK_FOR_A_PAIR)).stream()
                .noneMatch(question -> question.check() == Check.LOOK_FOR_A_PAIR));
    }

    private static double chance(Finding finding, Kinds kinds) {
        return finding.causes().stream()
                .filter(cause -> cause.kinds().equals(kinds))
                .mapToDouble(Finding.Cause::probability)
                .sum();
    }

    @Test
    void shapingIsOnlyLookedAtWhereThereIsSome() {
        Explanation plain = Trials.counts(6, 12, 18, 24, 25).get(4);
        Explanation shaped = Trials.counts(6, 12, 18, 23).get(3);
        assertTrue(Question.all(plain.soFar(), plain.shapes(), List.of()).stream()
                .noneMatch(question -> question.check().needsShaping()));
        assertTrue(Question.all(shaped.soFar(), shaped.shapes(), List.of()).stream()
                .anyMatch(question -> question.check().needsShaping()));
    }

    @Test
    void questionsComeWithTheMostTellingFirst() {
        Explanation shaped = Trials.counts(6, 12, 18, 23).get(3);
        List<Question> all = Question.all(shaped.soFar(), shaped.shapes(), List.of());
        assertEquals(
                all.stream()
                        .sorted(Comparator.comparingDouble((Question question) -> question.gain())
                                .reversed())
                        .toList(),
                all);
    }
}
