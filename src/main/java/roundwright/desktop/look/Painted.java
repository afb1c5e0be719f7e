package roundwright.desktop.look;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A component that paints itself; its accessible name tells in words what it shows. */
public class Painted extends JComponent {
    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessiblePainting();
        }
        return accessibleContext;
    }

    private final class AccessiblePainting extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LABEL;
        }
    }
}
