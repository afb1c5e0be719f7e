/** Counts out of a table and into one: what a file was found to hold, to be looked at and decided on before it is filed; what is saved. */
package roundwright.desktop.tables;
