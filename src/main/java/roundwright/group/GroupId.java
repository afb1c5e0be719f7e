package roundwright.group;

/** Names a group in the file. */
public record GroupId(long value) {}
