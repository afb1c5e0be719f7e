package roundwright.mistakes.chain;

import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import roundwright.mistakes.story.Check;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Landing;
import roundwright.mistakes.story.Rates;

/**
 * What is known of one round as it was worked: the count that was reported, and what was seen at the table.
 *
 * @param reported the count, where one was reported
 * @param answers to checks, in the order they were given
 */
record Seen(OptionalInt reported, List<Check.Answer> answers) {
    static final Seen NOTHING = new Seen(OptionalInt.empty(), List.of());

    private static final int[] ERRORS = {-10, -2, -1, 0, 1, 2, 10};

    Seen {
        answers = List.copyOf(answers);
    }

    /** The true counts that may lie behind the report, all of a landing's where there is none. */
    void possible(Landing landing, TreeSet<Integer> counts) {
        if (reported.isEmpty()) {
            for (int made = landing.from(); made < landing.to(); made++) {
                counts.add(made);
            }
            return;
        }
        for (int error : ERRORS) {
            int made = reported.getAsInt() - error;
            if (made >= 0) {
                counts.add(made);
            }
        }
    }

    /** The chance of the report where so many were made. */
    double reports(int made, Rates rates) {
        return reported.isEmpty() ? 1 : rates.reports(reported.getAsInt() - made);
    }

    boolean miscounted(int made) {
        return reported.isPresent() && reported.getAsInt() != made;
    }

    /** The chance of the answers where these kinds happened. */
    double answers(Kinds kinds) {
        double chance = 1;
        for (Check.Answer answer : answers) {
            chance *= answer.chance(kinds);
        }
        return chance;
    }

    /** P(made, this was seen | stitches below of the landing). */
    double chance(Landing landing, int made, Rates rates) {
        double chance = landing.chance(made);
        if (chance == 0 || answers.isEmpty()) {
            return chance * reports(made, rates);
        }
        double[] sum = {0};
        int mark = miscounted(made) ? Kinds.of(Kind.MISCOUNTED).code() : 0;
        landing.forEachOutcome(made, (code, part) -> {
            sum[0] += part * answers(new Kinds(code + mark));
            return true;
        });
        return sum[0] * reports(made, rates);
    }
}
