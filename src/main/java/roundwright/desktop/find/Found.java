package roundwright.desktop.find;

import roundwright.desktop.look.Glyph;

/**
 * Something that was found.
 *
 * @param glyph what kind of thing it is
 * @param words its name
 * @param more what helps to know it; may be empty
 * @param go takes one there
 */
public record Found(Glyph glyph, String words, String more, Runnable go) {
    @Override
    public String toString() {
        return more.isEmpty() ? words : words + ", " + more;
    }
}
