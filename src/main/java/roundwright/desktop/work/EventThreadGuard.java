package roundwright.desktop.work;

import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** Finds uses of the screen away from the event thread: on in tests, and in runs with {@code -Droundwright.guard=true}. */
public final class EventThreadGuard extends RepaintManager {
    private final java.util.function.Consumer<IllegalStateException> found;

    private EventThreadGuard(java.util.function.Consumer<IllegalStateException> found) {
        this.found = found;
    }

    /** Puts the guard on; each use off the event thread is handed over with its place. */
    public static void install(java.util.function.Consumer<IllegalStateException> found) {
        RepaintManager.setCurrentManager(new EventThreadGuard(found));
    }

    public static void remove() {
        RepaintManager.setCurrentManager(new RepaintManager());
    }

    @Override
    public synchronized void addInvalidComponent(JComponent component) {
        check(component);
        super.addInvalidComponent(component);
    }

    @Override
    public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
        check(component);
        super.addDirtyRegion(component, x, y, width, height);
    }

    private void check(JComponent component) {
        if (!SwingUtilities.isEventDispatchThread() && component.isShowing()) {
            found.accept(new IllegalStateException(component.getClass() + " was changed away from the event thread"));
        }
    }
}
