/**
 * A page for a student's phone: one file that needs nothing but itself. It reads without script; with script, counts are typed into it and come out as
 * one line to send: {@code Ines: Tower round 9 36, round 10 36}, which the reader of messages reads without loss.
 */
package roundwright.sheet.phone;
