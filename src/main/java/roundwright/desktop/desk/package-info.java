/** What the window has in hand: the open file, what is chosen in it, and who wants to know when that changes. No Swing. */
package roundwright.desktop.desk;
