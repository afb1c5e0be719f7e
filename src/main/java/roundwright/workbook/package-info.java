/**
 * The open file as the program sees it: all of it in memory as a view that never changes, every edit a value that is written at once,
 * can be undone and redone, and is told to listeners.
 *
 * <p>An {@link roundwright.workbook.Edit} is turned into the smallest changes there are (a value comes, changes or goes); these are
 * written to the disk in one transaction, then make the next view, and turned round they are the undo. Knows neither Swing nor SQL.
 */
package roundwright.workbook;
