package roundwright.desktop.planning;

import java.awt.Dimension;
import javax.swing.JComponent;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** A field with its label above it, narrow enough to stand beside others. */
final class FieldCell extends Stack {
    private final double width;

    /** A cell of a width in points; the hint is shown when the pointer rests on the field, and told with it. */
    FieldCell(String label, JComponent field, String hint, double width) {
        this.width = width;
        if (!hint.isEmpty()) {
            field.getAccessibleContext().setAccessibleDescription(hint);
            field.setToolTipText(hint);
        }
        below(0, Prose.of(label, Type.SMALL_STRONG, Tone.INK).nameOf(field));
        below(0.75, field);
    }

    @Override
    public Dimension getPreferredSize() {
        int wide = Space.points(width);
        return new Dimension(wide, heightFor(wide));
    }
}
