/**
 * Tables of counts: text files with separators as spreadsheets write them, spreadsheets, and blocks pasted from one.
 *
 * <p>{@code TableFile.read(bytes)} finds out what a file is, its letters, separator and lines; {@code ColumnMatch.guess(…)} says what
 * each column is, for the person to put right; {@code CountsReader} makes reports of the rows, says of every cell it cannot use where
 * and why, and what a person has to decide ({@code Unknowns}), which goes back into the {@code Roll} as {@code RollDecisions}.
 * {@code CountsTables} is the way out.
 */
package roundwright.group.counts;
