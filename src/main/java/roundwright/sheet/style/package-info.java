/** How a sheet looks: its paper, its type and the hand it is drawn for. */
package roundwright.sheet.style;
