package roundwright.desktop.desk;

import roundwright.course.Course;

/** Reads the text of a course file; what cannot be read in it is left out of the course. */
public interface CourseReader {
    Course read(String text);
}
