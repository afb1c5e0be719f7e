package roundwright.store;

import roundwright.group.CourseId;

/**
 * A course as the file keeps it.
 *
 * @param name what it is called in lists
 * @param text the course file's text, whole
 */
public record KeptCourse(CourseId id, String name, String text) {}
