package roundwright.desktop.look;

import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;

/** Key strokes: what is pressed, and what it does on a component. */
public final class Keys {
    private Keys() {}

    /** The mask of the system's menu key: Ctrl, or Command. Without a display it is Ctrl. */
    public static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    /** The menu key with a key of {@link KeyEvent}. */
    public static KeyStroke menu(int key) {
        return KeyStroke.getKeyStroke(key, menuMask());
    }

    /** Does something when the stroke comes while the component has the focus. */
    public static void bind(JComponent component, String stroke, Runnable does) {
        bind(component, JComponent.WHEN_FOCUSED, KeyStroke.getKeyStroke(stroke), does);
    }

    /** Does something when the stroke comes while the component, or one inside it, has the focus. */
    public static void bindAround(JComponent component, String stroke, Runnable does) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, KeyStroke.getKeyStroke(stroke), does);
    }

    /** Lets Tab leave a table, as it leaves every field: of itself it would go from cell to cell for ever. */
    public static void leaveByTab(JTable table) {
        KeyStroke tab = KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0);
        KeyStroke back = KeyStroke.getKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK);
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(tab, "none");
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(back, "none");
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(tab));
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of(back));
    }

    /** Does something when the stroke comes under a condition of {@link JComponent}. */
    public static void bind(JComponent component, int condition, KeyStroke stroke, Runnable does) {
        component.getInputMap(condition).put(stroke, stroke);
        component.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    /** Paints a component anew when it gains or loses the focus, so that its ring is seen. */
    public record RepaintOnFocus(JComponent component) implements FocusListener {
        @Override
        public void focusGained(FocusEvent event) {
            component.repaint();
        }

        @Override
        public void focusLost(FocusEvent event) {
            component.repaint();
        }
    }
}
