package roundwright.desktop.chart;

import java.awt.Container;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;

/** The pointer on a chart: a press chooses a step, a drag moves a chart that is zoomed, the wheel with the menu key zooms. */
final class ChartMouse extends MouseAdapter {
    private static final double A_NOTCH = 1.2;
    private static final double A_DRAG = 4;

    private final ChartPanel panel;
    private Point pressed = new Point();
    private boolean dragging;

    private ChartMouse(ChartPanel panel) {
        this.panel = panel;
    }

    static void on(ChartPanel panel) {
        ChartMouse mouse = new ChartMouse(panel);
        panel.addMouseListener(mouse);
        panel.addMouseMotionListener(mouse);
        panel.addMouseWheelListener(mouse);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        panel.requestFocusInWindow();
        pressed = event.getPoint();
        dragging = false;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (panel.zoom() > 1 && (dragging || pressed.distance(event.getPoint()) > Space.points(A_DRAG))) {
            dragging = true;
            panel.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
            panel.move(event.getX() - pressed.getX(), event.getY() - pressed.getY());
            pressed = event.getPoint();
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        panel.setCursor(Cursor.getDefaultCursor());
        if (!dragging) {
            panel.goToNearest(event.getX(), event.getY());
        }
        dragging = false;
    }

    /** Without the menu key the wheel moves what the chart stands in, as everywhere. */
    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if ((event.getModifiersEx() & Keys.menuMask()) != 0) {
            panel.zoom(Math.pow(A_NOTCH, -event.getPreciseWheelRotation()), event.getX(), event.getY());
            return;
        }
        Container around = SwingUtilities.getAncestorOfClass(JScrollPane.class, panel);
        if (around != null) {
            around.dispatchEvent(SwingUtilities.convertMouseEvent(panel, event, around));
        }
    }
}
