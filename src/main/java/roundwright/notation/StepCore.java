package roundwright.notation;

import roundwright.notation.Node.Manner;

/** What is done in one step, before how often and where. */
final class StepCore {
    Manner manner = Manner.PLAIN;
    StitchName name = StitchName.ANY;
    int takes = 1;
    int makes = 1;
    Hold hold = Hold.BOTH;
    Place place;
    /** What the writer calls a stitch that has no name of its own in the trade's table. */
    String own = "";

    boolean swallowedNumber;
    int skipped;
    boolean first;
    /** Goes on until the round is full ("dec every 2 sts"). */
    boolean fills;
    /** All that is left of the round. */
    boolean rest;

    boolean space;
    /** A spaced shaping word after the stitch: one name, or two steps. */
    boolean twoSteps;
    /** A stitch named right after the shaping word: one name, or two steps. */
    boolean stitchAfter;
}
