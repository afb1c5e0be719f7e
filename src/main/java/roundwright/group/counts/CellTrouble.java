package roundwright.group.counts;

/**
 * A cell that could not be used.
 *
 * @param line of the table, and {@code column}, both from 1
 * @param message what is wrong, in a sentence
 * @param leftOut whether the count of its row is left out; else the row is used without the cell
 */
public record CellTrouble(int line, int column, String cell, String message, boolean leftOut) {}
