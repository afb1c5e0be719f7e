/**
 * A student's true counts, round after round, behind what they reported: a hidden chain, followed exactly.
 *
 * <p>In a spiral the stitches below a round are the stitches made in the one before, so the true counts of a part are a
 * Markov chain with one small set of likely counts a round (a report leaves at most seven: what was said, and one, two or
 * ten stitches off). {@link Node} is one round as it was worked once; {@link StudentChain} adds a report at a time (forward),
 * and {@link Sweep} lets later reports speak on earlier rounds (backward). Where work was pulled back, the rounds worked
 * anew are a new branch from the last round left, and the old branch stays as evidence on the rounds below it; a part
 * worked onto another's last round grows from that. So the whole is a tree, and the two sweeps are exact on it.
 */
package roundwright.mistakes.chain;
