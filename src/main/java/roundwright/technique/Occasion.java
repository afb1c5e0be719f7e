package roundwright.technique;

import java.util.Arrays;
import java.util.Optional;

/** When groundwork has to be shown, because the work at hand cannot be done without it. */
public enum Occasion {
    /** The first round of the course. */
    FIRST_ROUND("first-round"),
    /** The first round that is worked on another. */
    SECOND_ROUND("second-round"),
    /** The first round that follows another without a join. */
    SPIRAL_ROUND("spiral-round"),
    /** The first line with a repeat in it. */
    REPEAT("repeat"),
    /** The first round without shaping. */
    EVEN_ROUND("even-round");

    private final String word;

    Occasion(String word) {
        this.word = word;
    }

    /** The word for it in the catalogue. */
    public String word() {
        return word;
    }

    static Optional<Occasion> of(String word) {
        return Arrays.stream(values())
                .filter(occasion -> occasion.word.equals(word))
                .findFirst();
    }
}
