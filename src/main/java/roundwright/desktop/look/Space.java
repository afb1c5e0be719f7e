package roundwright.desktop.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.BorderFactory;
import javax.swing.UIManager;
import javax.swing.border.Border;

/** Distances: everything stands on a grid of 8 points, scaled with the window. */
public final class Space {
    private Space() {}

    /** So many points at 100 %, in pixels. */
    public static int points(double points) {
        return Math.round(UIScale.scale((float) points));
    }

    /** So many steps of the grid, in pixels: {@code of(1.5)} is 12 points. */
    public static int of(double steps) {
        return points(steps * UIManager.getInt("Roundwright.space"));
    }

    /** Corner of a card. */
    public static int arc() {
        return points(UIManager.getInt("Roundwright.arc"));
    }

    /** Corner of something inside a card. */
    public static int smallArc() {
        return points(UIManager.getInt("Roundwright.smallArc"));
    }

    /** An empty border of so many steps of the grid that follows the zoom. */
    public static Border pad(double top, double left, double bottom, double right) {
        return new Pad(top, left, bottom, right);
    }

    public static Border pad(double all) {
        return pad(all, all, all, all);
    }

    public static Border none() {
        return BorderFactory.createEmptyBorder();
    }

    /** A copy of the graphics that draws smoothly; dispose it. */
    public static Graphics2D smooth(java.awt.Graphics graphics) {
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        copy.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        copy.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        copy.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return copy;
    }

    private record Pad(double top, double left, double bottom, double right) implements Border {
        @Override
        public void paintBorder(
                java.awt.Component component, java.awt.Graphics graphics, int x, int y, int width, int height) {
            // nothing to paint: it only keeps its distance
        }

        @Override
        public java.awt.Insets getBorderInsets(java.awt.Component component) {
            return new java.awt.Insets(of(top), of(left), of(bottom), of(right));
        }

        @Override
        public boolean isBorderOpaque() {
            return false;
        }
    }
}
