package roundwright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.UIManager;

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

    private final String file;
    private Shape drawing;

    Glyph(String file) {
        this.file = file;
    }

    /** Read when it is first seen. */
    Shape drawing() {
        if (drawing == null) {
            drawing = LineDrawing.named(file);
        }
        return drawing;
    }

    /** The icon at 16 points. */
    public Icon icon() {
        return icon(16, Optional.empty());
    }

    /** The icon at a size in points, in a tone of its own or else in the foreground of its component. */
    public Icon icon(int points, Optional<Tone> tone) {
        return new Drawn(points, tone);
    }

    private final class Drawn implements Icon {
        private final int points;
        private final Optional<Tone> tone;

        Drawn(int points, Optional<Tone> tone) {
            this.points = points;
            this.tone = tone;
        }

        @Override
        public int getIconWidth() {
            return Space.points(points);
        }

        @Override
        public int getIconHeight() {
            return Space.points(points);
        }

        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D smooth = Space.smooth(graphics);
            smooth.translate(x, y);
            smooth.scale(getIconWidth() / LineDrawing.SIDE, getIconHeight() / LineDrawing.SIDE);
            smooth.setColor(tone.map(Tone::color).orElseGet(() -> ink(component)));
            smooth.setStroke(new BasicStroke(LineDrawing.PEN, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            smooth.draw(drawing());
            smooth.dispose();
        }

        private Color ink(Component component) {
            if (component == null) {
                return Tone.INK.color();
            }
            return component.isEnabled() ? component.getForeground() : UIManager.getColor("Button.disabledText");
        }
    }
}
