package roundwright.mistakes.story;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Something that can be looked at on the table to tell one mistake from another.
 *
 * <p>Beginners see imperfectly: the true answer is given nine times in ten, each other answer with an equal share of the rest.
 */
public enum Check {
    RECOUNT("recount", List.of("same", "different"), kinds -> kinds.has(Kind.MISCOUNTED) ? 1 : 0),
    /** An unworked stitch below shows as a hole or a bar. */
    LOOK_FOR_A_GAP("look-for-a-gap", yesOrNo(), kinds -> kinds.has(Kind.SKIPPED) ? 1 : 0),
    /** Two stitches out of one, where none is due. */
    LOOK_FOR_A_PAIR("look-for-a-pair", yesOrNo(), kinds -> kinds.has(Kind.WORKED_TWICE) ? 1 : 0),
    COUNT_THE_SHAPINGS("count-the-shapings", List.of("as-written", "fewer", "more"), Check::shapings),
    COUNT_BETWEEN_SHAPINGS(
            "count-between-shapings", List.of("even", "uneven", "longer", "shorter"), Check::betweenShapings),
    LOOK_BEFORE_THE_MARKER("look-before-the-marker", yesOrNo(), kinds -> kinds.has(Kind.STOPPED_SHORT) ? 1 : 0),
    LOOK_PAST_THE_MARKER("look-past-the-marker", yesOrNo(), kinds -> kinds.has(Kind.RAN_PAST) ? 1 : 0),
    READ_THE_LINE_AGAIN("read-the-line-again", List.of("this", "another"), kinds -> kinds.has(Kind.WRONG_LINE) ? 1 : 0);

    private static final double SEEN_RIGHT = 0.9;

    private final String word;
    private final List<String> answers;
    private final Function<Kinds, Integer> truth;

    Check(String word, List<String> answers, Function<Kinds, Integer> truth) {
        this.word = word;
        this.answers = answers;
        this.truth = truth;
    }

    private static List<String> yesOrNo() {
        return List.of("no", "yes");
    }

    private static int shapings(Kinds kinds) {
        boolean fewer = kinds.has(Kind.INCREASE_MISSED)
                || kinds.has(Kind.DECREASE_MISSED)
                || kinds.has(Kind.REPEAT_SHORT)
                || kinds.has(Kind.REPEAT_ONCE)
                || kinds.has(Kind.SHAPING_LEFT_OUT);
        return fewer ? 1 : kinds.has(Kind.REPEAT_EXTRA) ? 2 : 0;
    }

    private static int betweenShapings(Kinds kinds) {
        if (kinds.has(Kind.RUNS_LONG)) {
            return 2;
        }
        if (kinds.has(Kind.RUNS_SHORT)) {
            return 3;
        }
        boolean uneven = kinds.has(Kind.SKIPPED)
                || kinds.has(Kind.WORKED_TWICE)
                || kinds.has(Kind.INCREASE_MISSED)
                || kinds.has(Kind.DECREASE_MISSED);
        return uneven ? 1 : 0;
    }

    /** The name for it in files and JSON. */
    public String word() {
        return word;
    }

    /** What can be answered, as written in files and JSON. */
    public List<String> answers() {
        return answers;
    }

    /** What can be answered to each check, by their names. */
    public static Map<String, List<String>> allAnswers() {
        return Arrays.stream(values()).collect(Collectors.toMap(Check::word, Check::answers));
    }

    /** Whether it makes sense only where the round has an increase or a decrease. */
    public boolean needsShaping() {
        return this == COUNT_THE_SHAPINGS || this == COUNT_BETWEEN_SHAPINGS;
    }

    /** Number of the answer that sharp eyes would give. */
    public int truth(Kinds kinds) {
        return truth.apply(kinds);
    }

    /** The chance that a beginner gives the answer of that number when these kinds happened. */
    public double chance(int answer, Kinds kinds) {
        return answer == truth(kinds) ? SEEN_RIGHT : (1 - SEEN_RIGHT) / (answers.size() - 1);
    }

    public static Optional<Check> of(String word) {
        return Arrays.stream(values()).filter(check -> check.word.equals(word)).findFirst();
    }

    /** An answer that was given. */
    public record Answer(Check check, String answer) {
        public Answer {
            if (!check.answers.contains(answer)) {
                throw new IllegalArgumentException("'" + answer + "' answers no " + check.word);
            }
        }

        /** The chance of the answer when these kinds happened. */
        public double chance(Kinds kinds) {
            return check.chance(check.answers.indexOf(answer), kinds);
        }
    }
}
