package roundwright.course.file;

import roundwright.notation.Span;

/**
 * A {@code - key: value} item.
 *
 * @param key in lower case
 * @param keySpan where the key stands in the file
 * @param value what stands after the colon; may be empty
 * @param entry the whole item
 */
public record Setting(String key, Span keySpan, Written value, Entry entry) {}
