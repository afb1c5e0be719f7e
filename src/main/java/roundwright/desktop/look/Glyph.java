package roundwright.desktop.look;

import com.formdev.flatlaf.extras.FlatSVGIcon;
import java.awt.Color;
import java.awt.Component;
import java.util.Optional;
import javax.swing.Icon;

/** The icons of the window, drawn in the colour of the words beside them. */
public enum Glyph {
    PLAN("calendar-days"),
    COUNTS("table-2"),
    STUCK("life-buoy"),
    NEXT("circle-arrow-right"),
    FIND("search"),
    UNDO("undo-2"),
    REDO("redo-2"),
    ADD("plus"),
    CLOSE("x"),
    DOWN("chevron-down"),
    LEFT("chevron-left"),
    RIGHT("chevron-right"),
    LIGHT("sun"),
    DARK("moon"),
    LARGER("zoom-in"),
    SMALLER("zoom-out"),
    PRINT("printer"),
    OPEN("folder-open"),
    GROUP("users"),
    STUDENT("user-plus"),
    MESSAGES("message-square-text"),
    HIDE("eye-off"),
    SHOW("eye"),
    DONE("check"),
    NOTE("notebook-pen"),
    PASTE("clipboard-paste"),
    MORE("menu"),
    SAVE("download"),
    REGISTER("clipboard-check"),
    COURSE("book-open"),
    EDIT("pencil"),
    REMOVE("trash-2"),
    NEW("file-plus-2"),
    TROUBLE("triangle-alert");

    private static final float AS_DRAWN = 24;

    private final String file;

    Glyph(String file) {
        this.file = "roundwright/desktop/look/icons/" + file + ".svg";
    }

    /** The icon at 16 points. */
    public Icon icon() {
        return icon(16, Optional.empty());
    }

    /** The icon at a size in points, in a tone of its own or else in the foreground of its component. */
    public Icon icon(int points, Optional<Tone> tone) {
        FlatSVGIcon icon = new FlatSVGIcon(file, points / AS_DRAWN);
        icon.setColorFilter(new FlatSVGIcon.ColorFilter(
                (Component component, Color color) -> tone.map(Tone::color).orElseGet(() -> ground(component))));
        return icon;
    }

    private static Color ground(Component component) {
        return component == null ? Tone.INK.color() : component.getForeground();
    }
}
