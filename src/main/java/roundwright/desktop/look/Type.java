package roundwright.desktop.look;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.swing.UIManager;

/** The type scale: sizes in points at 100 %, from the theme files, in the shipped typeface. */
public enum Type {
    SMALL("small", false),
    SECOND("second", false),
    BODY("body", false),
    STRONG("body", true),
    SMALL_STRONG("second", true),
    HEADING("heading", true),
    /** A line of the pattern as it is written. */
    LINE("line", true),
    /** The student's page, to be read from across a table. */
    PAGE("page", false),
    PAGE_STRONG("page", true),
    PAGE_HEADING("pageHeading", true),
    TITLE("title", true);

    private static final Map<String, Font> FONTS = new ConcurrentHashMap<>();

    private final String key;
    private final boolean strong;

    Type(String key, boolean strong) {
        this.key = "Roundwright.type." + key;
        this.strong = strong;
    }

    /** The font at the window's zoom. */
    public Font font() {
        float size = UIScale.scale(((Number) UIManager.get(key)).floatValue());
        return FONTS.computeIfAbsent(strong + " " + size, absent -> plainOrStrong(size));
    }

    private Font plainOrStrong(float size) {
        String family = strong ? FlatInterFont.FAMILY_SEMIBOLD : FlatInterFont.FAMILY;
        return FontUtils.getCompositeFont(family, Font.PLAIN, 12).deriveFont(size);
    }
}
