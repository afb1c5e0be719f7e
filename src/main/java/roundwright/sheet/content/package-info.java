/**
 * What the sheets say. {@link roundwright.sheet.content.CourseWork} lays a course out by its lessons; each sheet is a class that puts its sections
 * together; sections that several sheets share have a class of their own.
 */
package roundwright.sheet.content;
