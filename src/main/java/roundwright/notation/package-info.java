/**
 * Text to written round and back: terms, scanner, reader, the sealed instruction tree, the writer, and problems with their spans.
 *
 * <p>A line is scanned into tokens, parsed into one or a few trees where the writer's words can be read in more than one
 * way, and handed to {@code pattern}, whose sums choose. Every token and node keeps its span; nothing is thrown away.
 */
package roundwright.notation;
