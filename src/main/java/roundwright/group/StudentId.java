package roundwright.group;

/** Names a student in the file. */
public record StudentId(long value) {}
