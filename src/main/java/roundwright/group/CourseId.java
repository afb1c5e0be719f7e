package roundwright.group;

/** Names a course in the file. */
public record CourseId(long value) {}
