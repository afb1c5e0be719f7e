package roundwright.desktop.look;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.table.TableCellRenderer;

/**
 * Paints one cell of a table after the other. It stands nowhere itself, so laying it out and asking for it to be painted anew would be
 * for nothing, and each time something would be sent to the screen; nor is it told in words before somebody wants to hear it.
 */
public abstract class PaintedCell extends JComponent implements TableCellRenderer {
    /** What the cell shows, in words. */
    protected abstract String told();

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleCell();
        }
        return accessibleContext;
    }

    @Override
    public void invalidate() {
        // has no layout
    }

    @Override
    public void validate() {
        // has no layout
    }

    @Override
    public void revalidate() {
        // has no layout
    }

    @Override
    public void repaint(long time, int x, int y, int width, int height) {
        // the table is painted, not the cell
    }

    private final class AccessibleCell extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LABEL;
        }

        @Override
        public String getAccessibleName() {
            return told();
        }
    }
}
