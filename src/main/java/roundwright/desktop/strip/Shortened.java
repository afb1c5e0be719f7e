package roundwright.desktop.strip;

import java.awt.FontMetrics;

/** Cuts words to a width, at the end of a word where one fits, with an ellipsis; with less room than a few letters, to nothing. */
final class Shortened {
    private static final int FEWEST = 4;

    private Shortened() {}

    static String to(String text, FontMetrics metrics, double width) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        for (int length = text.length() - 1; length >= FEWEST; length--) {
            String cut = text.substring(0, length).stripTrailing() + "…";
            if (metrics.stringWidth(cut) <= width) {
                return cut;
            }
        }
        return "";
    }
}
