package roundwright.group.counts;

/**
 * A cell that could not be used; nothing of it is filed.
 *
 * @param line of the table, and {@code column}, both from 1
 * @param message what is wrong, in a sentence
 */
public record CellTrouble(int line, int column, String cell, String message) {}
