package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Check;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Rates;

/** On invented classes: how often the true cause of a wrong count is ranked first, and whether the probabilities mean what they say. */
class RankingTest {
    private static final int STUDENTS = 400;

    /** How many wrong counts there were, and how many had their true cause first, before and after each question. */
    private record Shares(int wrong, int[] first, double[] promised) {
        double share(int questions) {
            return first[questions] / (double) wrong;
        }
    }

    private static Trials invented() {
        Trials trials = new Trials(Trials.BELL);
        for (int student = 0; student < STUDENTS; student++) {
            trials.student(student, Rates.STORY, 1000 + student);
        }
        return trials;
    }

    private static Shares measure(Trials trials) {
        Shares shares = new Shares(0, new int[3], new double[3]);
        SplittableRandom eyes = new SplittableRandom(5);
        for (int student = 0; student < STUDENTS; student++) {
            StudentId id = new StudentId(student);
            List<CountReport> own = trials.reports.stream()
                    .filter(report -> report.student().equals(id))
                    .toList();
            Explanations explanations = new Explanations(Trials.BELL, each -> Rates.STORY);
            for (CountReport report : own) {
                explanations.add(report);
                if (trials.truth.containsKey(report)) {
                    List<Explanation> all = explanations.of(id);
                    Explanation newest = all.get(all.size() - 1);
                    if (newest.state() == State.OFF) {
                        shares = ask(explanations, newest, trials.truth.get(report), eyes, shares);
                        explanations.add(report);
                    }
                }
            }
        }
        return shares;
    }

    private static Shares ask(
            Explanations explanations, Explanation asked, Kinds truth, SplittableRandom eyes, Shares shares) {
        Explanation now = asked;
        for (int questions = 0; questions < 3; questions++) {
            Finding.Cause first = now.soFar().causes().get(0);
            shares.first()[questions] += first.kinds().equals(truth) ? 1 : 0;
            shares.promised()[questions] += first.probability();
            Optional<Question> question = now.question();
            if (question.isPresent()) {
                Map<String, String> answers = new LinkedHashMap<>(now.report().checks());
                answers.put(question.get().check().word(), answer(question.get().check(), truth, eyes));
                explanations.add(now.report().checked(answers));
                List<Explanation> all = explanations.of(now.report().student());
                now = all.get(all.size() - 1);
            }
        }
        return new Shares(shares.wrong() + 1, shares.first(), shares.promised());
    }

    /** What a beginner sees. */
    private static String answer(Check check, Kinds truth, SplittableRandom eyes) {
        int right = check.truth(truth);
        if (eyes.nextDouble() < 0.9) {
            return check.answers().get(right);
        }
        int other = eyes.nextInt(check.answers().size() - 1);
        return check.answers().get(other < right ? other : other + 1);
    }

    @Test
    void theTrueCauseComesFirstAsOftenAsPromisedAndMoreOftenWithEachQuestion() {
        Shares shares = measure(invented());
        assertTrue(shares.wrong() > 500, shares.wrong() + " wrong counts");
        for (int questions = 0; questions < 3; questions++) {
            double promised = shares.promised()[questions] / shares.wrong();
            double error = Math.sqrt(promised * (1 - promised) / shares.wrong());
            assertEquals(promised, shares.share(questions), 3.5 * error, questions + " questions");
        }
        assertTrue(shares.share(1) > shares.share(0));
        assertTrue(shares.share(2) > shares.share(1));
    }
}
