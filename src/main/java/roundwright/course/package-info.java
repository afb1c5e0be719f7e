/** Course, lesson, the course file read and written without loss; the planner; dates. */
package roundwright.course;
