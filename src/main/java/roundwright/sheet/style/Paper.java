package roundwright.sheet.style;

import java.util.Locale;

/** The paper in the printer. */
public enum Paper {
    A4,
    LETTER;

    /** Its name in style sheets and on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
