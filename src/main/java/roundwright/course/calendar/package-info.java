/**
 * When a course meets, and the calendar file (iCalendar, RFC 5545) that says so.
 *
 * <p>Times are those of the place's clock, through summer and winter time: {@code java.time} knows the rules, and the file
 * carries them as far as the run needs them. An event keeps its UID however the run changes: it is taken from the file that
 * was written before, and otherwise follows from the run's name and the lesson's number.
 */
package roundwright.course.calendar;
