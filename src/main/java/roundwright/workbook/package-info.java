/** The open file as the program sees it: every edit, undo and redo, what changed. No Swing, no SQL. */
package roundwright.workbook;
