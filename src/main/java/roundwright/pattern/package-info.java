/**
 * Patterns, parts and rounds; the steps of a round with its repeats written out; the arithmetic of a round and of a whole
 * part, and the mends of one that does not add up.
 *
 * <p>What a round is worked into is told apart: stitches of the round below, chain spaces in it, a ring, or a chain. A chain that
 * a piece begins with, be it in a line of its own, says how many stitches the first round or row has; sides that go on to a corner
 * share what the corners leave of the round.
 */
package roundwright.pattern;
