package roundwright.mistakes.help;

import java.util.Comparator;
import java.util.List;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.learning.LearnedRates;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Wording;

/**
 * A technique to teach once more: the group goes wrong in it surely more often than beginners usually do.
 *
 * @param mastery the group's mastery of it
 * @param times how many times as often it goes wrong as usual
 */
public record TeachAgain(Mastery mastery, double times) {
    private static final Wording WORDS = Wording.of("mistakes");

    /** Fewer mistakes than this in a whole group are no ground for a lesson. */
    private static final double ENOUGH = 3;

    /** What to teach again, the most needed first. */
    static List<TeachAgain> of(LearnedRates group) {
        return Mastery.of(group).stream()
                .filter(mastery -> mastery.missed() >= ENOUGH)
                .filter(mastery -> 1 - mastery.high() > Rates.STORY.rate(mastery.kind()))
                .map(mastery -> new TeachAgain(mastery, (1 - mastery.value()) / Rates.STORY.rate(mastery.kind())))
                .sorted(Comparator.comparingDouble(TeachAgain::times).reversed())
                .toList();
    }

    /** "Missing decreases: about 9 of 60 went wrong in this group, 3.8 times as often as usual." */
    public String words(Sentences sentences) {
        return WORDS.say(
                "teach-again",
                sentences.habit(mastery.kind()),
                Math.round(mastery.missed()),
                Math.round(mastery.chances()),
                Math.round(times * 10) / 10.0);
    }
}
