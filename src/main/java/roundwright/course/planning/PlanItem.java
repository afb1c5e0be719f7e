package roundwright.course.planning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing to do in working order: a round, or an instruction between rounds that takes time.
 *
 * <p>Round 1 of a part, eight stitches into a ring at eleven a minute, where ring and stitch are new: 0.73 minutes of work,
 * 0.75 of counting, and the teaching of both.
 *
 * @param part name of its part
 * @param round its number; empty for an instruction
 * @param instruction the instruction as written; empty for a round
 * @param stitches stitches made in it
 * @param working minutes of the stitches at the plan's pace, and of doing what an instruction says
 * @param counting minutes of counting and moving the marker
 * @param teaching minutes of teaching what comes here for the first time
 * @param introduces ids of the techniques that come here for the first time
 * @param shaping a round with increases or decreases
 * @param range a number that the rounds of one written range share; every other item has its own
 * @param endsPart the last item of its part
 * @param prepares it must not be left before the next item is done: a stuffing, before the closing
 * @param homework it may be given as homework
 */
public record PlanItem(
        String part,
        OptionalInt round,
        Optional<String> instruction,
        int stitches,
        double working,
        double counting,
        double teaching,
        List<String> introduces,
        boolean shaping,
        int range,
        boolean endsPart,
        boolean prepares,
        boolean homework) {
    public PlanItem {
        introduces = List.copyOf(introduces);
        if (!(working >= 0 && counting >= 0 && teaching >= 0 && stitches >= 0)) {
            throw new IllegalArgumentException(stitches + " stitches in " + working + " minutes, " + counting
                    + " of counting and " + teaching + " of teaching, in " + part);
        }
    }

    /** All minutes it takes in class. */
    public double minutes() {
        return working + counting + teaching;
    }

    /** The same thing done at another pace. */
    public PlanItem atPace(double planned, double pace) {
        double tasks = Math.max(0, working - stitches / planned);
        return new PlanItem(
                part,
                round,
                instruction,
                stitches,
                stitches / pace + tasks,
                counting,
                teaching,
                introduces,
                shaping,
                range,
                endsPart,
                prepares,
                homework);
    }
}
