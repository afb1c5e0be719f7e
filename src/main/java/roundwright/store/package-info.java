/**
 * The file: one SQLite database, for one program at a time.
 *
 * <p>Rollback journal with full synchronisation, so that the one file holds everything and can be copied to a stick at any time;
 * exclusive lock of the operating system, which ends with the process; tables of strict types; foreign keys; dates as ISO text
 * through one converter; a numbered form with steps from each version to the next, and a backup before them. A file is looked at
 * from outside before it is opened, and what is not for this program is left byte for byte as it was.
 *
 * <p>Backups are dated copies by the database's own backup call, each opened and checked before it gets its name, thinned by days,
 * weeks and months. Going back to one takes over its content in one transaction. A damaged file is read page by page, without the
 * database, and what can be saved goes into a new one.
 *
 * <p>Whoever is erased is erased: what is deleted is overwritten, the journal is emptied after each edit, nothing goes to temporary
 * files, and the file is written anew. Every file comes into being readable by its owner alone.
 *
 * <p>To add something that is kept: a step in {@code Migrations}, a {@link roundwright.store.Shelf} for the new values, and a kind in
 * the workbook.
 */
package roundwright.store;
