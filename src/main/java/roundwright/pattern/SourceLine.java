package roundwright.pattern;

/**
 * A line as written.
 *
 * @param at offset of its first character in the text it came from
 */
public record SourceLine(String text, int at) {}
