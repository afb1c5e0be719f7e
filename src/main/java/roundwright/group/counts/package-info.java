/**
 * Tables of counts: text files with separators as spreadsheets write them, and blocks pasted from one.
 *
 * <p>{@code Table.of(bytes)} finds out letters, separator and lines; {@code ColumnMatch.guess(…)} says what each column is, for
 * the person to put right; {@code CountsReader} makes reports of the rows and says of every cell it cannot use where and why.
 * {@code CountsWriter} is the way out.
 */
package roundwright.group.counts;
