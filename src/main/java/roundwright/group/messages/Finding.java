package roundwright.group.messages;

import roundwright.notation.Span;

/** Something found in a pasted text, at its place. */
public sealed interface Finding permits Reading, Unplaced {
    /** Where it stands in the text. */
    Span source();
}
