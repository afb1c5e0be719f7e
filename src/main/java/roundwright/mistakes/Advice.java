package roundwright.mistakes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to do about a round that is off: every choice with what it costs, and which is best.
 *
 * @param over stitches that the round most likely has more than written; fewer where negative
 * @param choices all three, those that are open first, the cheapest first
 */
public record Advice(int over, List<Choice> choices) {
    public Advice {
        choices = choices.stream()
                .sorted(Comparator.comparing((Choice choice) -> !choice.open()).thenComparingDouble(Choice::minutes))
                .toList();
    }

    /** What can be done. */
    public enum Way {
        PULL_BACK("pull-back"),
        PUT_RIGHT("put-right"),
        LEAVE("leave");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        /** The name for it in files and JSON. */
        public String word() {
            return word;
        }
    }

    /**
     * One thing that can be done.
     *
     * @param open whether it may be done
     * @param toRound for pulling back, the last round that stays; for putting right, the round that takes it up; else the round itself
     * @param minutes what it costs the student
     * @param line for putting right, the line to work instead
     * @param words what it means, or why it is not open, in a sentence
     * @param laterCounts the counts to expect of the next rounds once it is done
     */
    public record Choice(
            Way way,
            boolean open,
            int toRound,
            double minutes,
            Optional<String> line,
            String words,
            List<LaterCount> laterCounts) {
        public Choice {
            laterCounts = List.copyOf(laterCounts);
        }
    }

    /** The count to expect of a round, in place of the pattern's own where that differs. */
    public record LaterCount(int round, int count) {}

    /** The cheapest choice that is open. */
    public Choice best() {
        return choices.get(0);
    }
}
