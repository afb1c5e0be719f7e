package roundwright.desktop.look;

import java.awt.FontMetrics;
import roundwright.wording.Beginning;

/** Cuts words to a width, with an ellipsis; with less room than a few letters, to nothing. */
public final class Cut {
    private static final int FEWEST = 3;

    private Cut() {}

    /** The text, or as much of it as the width in pixels holds. */
    public static String to(String text, FontMetrics metrics, double width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        for (int length = text.length() - 1; length >= FEWEST; length--) {
            String cut = Beginning.shown(text, length);
            if (metrics.stringWidth(cut) <= width) {
                return cut;
            }
        }
        return "";
    }
}
