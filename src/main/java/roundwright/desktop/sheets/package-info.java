/** Making what is printed or sent: which sheets, into which folder, how far it is. */
package roundwright.desktop.sheets;
