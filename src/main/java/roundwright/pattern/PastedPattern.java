package roundwright.pattern;

import java.util.List;

/**
 * A pattern as it is pasted from a page or a letter, cut into its parts: what stands before the first part, and the parts with the
 * names that their headings give them.
 *
 * <p>Blank lines mean little there: some writers leave one after every round. A part begins where the numbers of the rounds begin
 * again, below a heading with its mark or, where rounds have no numbers, below a heading that stands apart.
 *
 * @param before title, materials, abbreviations and the like
 * @param parts in the order in which they stand; a part without a heading is called by its number
 */
public record PastedPattern(List<SourceLine> before, List<PartText> parts) {
    public PastedPattern {
        before = List.copyOf(before);
        parts = List.copyOf(parts);
    }

    /** Any text can be cut. Where no line is a round, everything stands before. */
    public static PastedPattern of(CharSequence text) {
        return new PastedParts(BareLines.rows(text)).cut();
    }
}
