/**
 * What is printed, sent and hung on the wall: sheets for the teacher and for students, as tagged PDF and as HTML pages that need nothing
 * but themselves.
 */
package roundwright.sheet;
