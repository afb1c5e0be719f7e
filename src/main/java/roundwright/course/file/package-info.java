/**
 * The course file, read and written without loss.
 *
 * <p>A course is one CommonMark document. {@link roundwright.course.file.CourseDocument} keeps the text as it was and knows the place of
 * every heading, setting and line in it; {@link roundwright.course.file.CourseFile} reads the course out of it and reports what is
 * wrong, each with its place; {@link roundwright.course.file.CourseEdits} changes the text in as few places as can be, so that everything
 * that was not meant stays byte for byte as it stood.
 *
 * <p>What a file looks like: exactly one {@code #} heading, the course's name; {@code - key: value} items below it, its settings;
 * {@code ## Part: NAME} headings with the pattern, one line a list item or one line a line of a paragraph; {@code ## Lesson N: NAME} headings
 * with {@code - rounds: Tower 4-6, Lantern 1} and the other items of a lesson; {@code ## Technique: NAME} headings for techniques
 * that the file defines itself. Other headings, paragraphs, comments and items are kept and passed over.
 */
package roundwright.course.file;
