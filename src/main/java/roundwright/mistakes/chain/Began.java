package roundwright.mistakes.chain;

/**
 * Where a piece may have gone off first.
 *
 * @param part name of the part
 * @param round the first round whose true count is not the written one
 * @param probability the chance that it is this round
 */
public record Began(String part, int round, double probability) {}
