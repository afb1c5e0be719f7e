package roundwright.sheet.style;

import java.util.Optional;

/** How the type of a student's sheet is set. */
public enum TypeSetting {
    /** Twelve points and up. */
    PLAIN("plain", ""),
    /** Eighteen points, one column, wide margins, every round written out. Source: handouts for people with low vision. */
    LARGE("large", "-large"),
    /** Letters that are easily told apart, wide spacing, short lines on cream. Source: handouts for dyslexic readers. */
    READING("reading", "-easy-reading");

    private final String style;
    private final String suffix;

    TypeSetting(String style, String suffix) {
        this.style = style;
        this.suffix = suffix;
    }

    /** Its name in the style sheets. */
    public String style() {
        return style;
    }

    /** The colour of the whole page, as a style sheet writes it; empty for the paper's own. */
    public Optional<String> ground() {
        return this == READING ? Optional.of("#FBF5E6") : Optional.empty();
    }

    /** What it adds to a file's name. */
    public String suffix() {
        return suffix;
    }
}
