package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.notation.Problem;
import roundwright.notation.Terms;

/**
 * One written line of a pattern, read and checked against the round below it.
 *
 * @param text the line as written
 * @param at offset of the line's first character in the text it came from (a file, or the lines of a part)
 * @param terms the terms it was read in
 * @param label the round numbers it is for, where it says them
 * @param round what it has the hands do, where it is a stitch instruction that was understood whole
 * @param stated the count it states for the round (the last round, of a range)
 * @param available stitches the round below offers; empty at a part's start or where unknown
 * @param verdict what the sums say
 * @param problems with spans in {@code text}; a suggestion is the whole line to write instead
 * @param words the line in plain words for a beginner
 * @param sum the line's arithmetic in one sentence
 */
public record Line(
        String text,
        int at,
        Terms terms,
        Optional<Label> label,
        Optional<Steps> round,
        OptionalInt stated,
        OptionalInt available,
        Verdict verdict,
        List<Problem> problems,
        String words,
        String sum) {
    public Line {
        problems = List.copyOf(problems);
    }

    /** First and last round number of a line; the same for a single round. */
    public record Label(int first, int last) {
        public Label {
            if (first < 0 || last < first) {
                throw new IllegalArgumentException("no rounds from " + first + " to " + last);
            }
        }

        public int rounds() {
            return last - first + 1;
        }
    }

    /** The count to reach: what is stated, else what the steps make. */
    public OptionalInt count() {
        return stated.isPresent()
                ? stated
                : round.map(steps -> OptionalInt.of(steps.makes())).orElse(OptionalInt.empty());
    }
}
