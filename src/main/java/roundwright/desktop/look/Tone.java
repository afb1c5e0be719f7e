package roundwright.desktop.look;

import java.awt.Color;
import javax.swing.UIManager;

/** The colours of the window, by what they are for. Their values stand in the theme files, light and dark. */
public enum Tone {
    BACKGROUND("background"),
    SURFACE("surface"),
    /** Behind the written line and whatever is chosen. */
    WASH("wash"),
    /** Behind the switch between pages. */
    SWITCH("switch"),
    /** Hairlines. */
    LINE("line"),
    /** The edge of something that can be pressed or typed into. */
    EDGE("edge"),
    /** The empty rest of a bar. */
    TRACK("track"),
    INK("ink"),
    MUTED("muted"),
    /** The one accent. */
    PINE("pine"),
    ON_PINE("onPine"),
    /** What is new, and what is trouble. */
    MARIGOLD("marigold"),
    MARIGOLD_WASH("marigoldWash"),
    OVER("over"),
    OVER_WASH("overWash"),
    UNDER("under"),
    UNDER_WASH("underWash");

    private final String key;

    Tone(String key) {
        this.key = "Roundwright." + key;
    }

    /** Its name in the theme files. */
    public String key() {
        return key;
    }

    public Color color() {
        return UIManager.getColor(key);
    }
}
