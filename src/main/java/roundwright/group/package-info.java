/**
 * Those who take a course, and what they report: groups, students, sessions, register, count reports as history; what follows from
 * them (where a student stands, how fast they work); reading counts out of messages and tables.
 *
 * <p>Values only: nothing here knows the file, the clock or the screen.
 */
package roundwright.group;
