package roundwright.sheet.markup;

/**
 * Words of a document. Characters that no document may hold are left out, so that anything a person typed can be printed.
 *
 * @param words as they are read; they are escaped when they are written
 */
public record Text(String words) implements Node {
    public Text {
        words = printable(words);
    }

    /** Without control characters, halves of characters, and marks that turn the direction of everything after them. */
    static String printable(String words) {
        StringBuilder kept = new StringBuilder(words.length());
        words.codePoints().filter(Text::mayStand).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean mayStand(int character) {
        int type = Character.getType(character);
        boolean turns = (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
        boolean nothing = (character & 0xFFFE) == 0xFFFE || (character >= 0xFDD0 && character <= 0xFDEF);
        boolean space = character == '\t' || character == '\n' || character == '\r';
        return space || !(turns || nothing || type == Character.CONTROL || type == Character.SURROGATE);
    }
}
