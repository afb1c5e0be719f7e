package roundwright.store;

/** Something the file remembers for the program, such as the group that was last looked at. */
public record Setting(String name, String value) {}
