/**
 * Reads the rows of a database file from its bytes, page by page, without opening it: what a damaged file still holds. Follows the
 * SQLite file format, sections 1.3 (heading), 1.5 (freelist), 1.6 (pages of trees) and 2 (records).
 */
package roundwright.store.pages;
