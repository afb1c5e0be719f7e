package roundwright.group;

/** Names a session of a group in the file. */
public record SessionId(long value) {}
