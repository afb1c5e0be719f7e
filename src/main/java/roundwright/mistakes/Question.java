package roundwright.mistakes;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Check;
import roundwright.wording.Wording;

/**
 * A check to ask a student for.
 *
 * @param check what to look at
 * @param gain by how much the answer is expected to narrow down what happened, in nats (0.69 halves the doubt between two)
 */
public record Question(Check check, double gain) {
    private static final Wording WORDS = Wording.of("mistakes");

    /** A check that tells less is not worth a student's time. */
    private static final double WORTH_ASKING = 0.001;

    /** An answer as a person reads it. */
    public record Answer(String word, String words) {}

    /**
     * The check with the largest gain.
     *
     * @param shapes whether the round has an increase or a decrease: two checks look at them
     * @param asked checks that were answered already
     */
    static Optional<Question> best(Finding finding, boolean shapes, Collection<Check> asked) {
        return all(finding, shapes, asked).stream().findFirst();
    }

    /** Every check that is worth asking for, the most telling first. */
    static List<Question> all(Finding finding, boolean shapes, Collection<Check> asked) {
        return Arrays.stream(Check.values())
                .filter(check -> shapes || !check.needsShaping())
                .filter(check -> !asked.contains(check))
                .map(check -> new Question(check, gain(check, finding)))
                .filter(question -> question.gain() > WORTH_ASKING)
                .sorted(Comparator.comparingDouble((Question question) -> question.gain())
                        .reversed())
                .toList();
    }

    /**
     * The mutual information of answer and kinds: the doubt about the answer, less the doubt that is only from seeing badly.
     */
    private static double gain(Check check, Finding finding) {
        int answers = check.answers().size();
        double doubt = 0;
        double sight = 0;
        double total = finding.causes().stream()
                .mapToDouble(Finding.Cause::probability)
                .sum();
        for (int answer = 0; answer < answers; answer++) {
            double chance = 0;
            for (Finding.Cause cause : finding.causes()) {
                double given = check.chance(answer, cause.kinds());
                chance += cause.probability() / total * given;
                sight -= cause.probability() / total * given * Math.log(given);
            }
            doubt -= chance > 0 ? chance * Math.log(chance) : 0;
        }
        return Math.max(0, doubt - sight);
    }

    /** The question in plain words, with how to look. */
    public String words() {
        return WORDS.say("ask." + check.word());
    }

    /** The answers, in plain words. */
    public List<Answer> answers() {
        return check.answers().stream()
                .map(answer -> new Answer(answer, WORDS.say("answer." + check.word() + "." + answer)))
                .toList();
    }
}
