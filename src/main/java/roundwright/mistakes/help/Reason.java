package roundwright.mistakes.help;

import java.util.List;
import roundwright.group.RoundPlace;

/**
 * Why a student needs help.
 *
 * @param ground what kind of reason it is
 * @param weight how much it counts in the ranking
 * @param words the reason in a sentence, with its evidence
 * @param evidence the rounds it rests on; may be empty
 */
public record Reason(Ground ground, double weight, String words, List<RoundPlace> evidence) {
    /** The kinds of reasons. */
    public enum Ground {
        NO_PROGRESS,
        PULLED_BACK_OFTEN,
        WRONG_AND_GOING_ON,
        WRONG_NOW,
        TO_COUNT_AGAIN,
        DRIFT,
        FAILING_TECHNIQUE,
        ABSENT_WHEN_TAUGHT,
        ASKED_FOR_HELP
    }

    public Reason {
        evidence = List.copyOf(evidence);
    }
}
