package roundwright.desktop.ask;

import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Does something when nothing has been typed into a text for a moment. */
public final class WhenTyped implements DocumentListener {
    private final Timer timer;

    private WhenTyped(int pause, Runnable does) {
        timer = new Timer(pause, event -> does.run());
        timer.setRepeats(false);
    }

    /** Listens to a text; the pause is in milliseconds. */
    public static WhenTyped into(JTextComponent text, int pause, Runnable does) {
        WhenTyped listening = new WhenTyped(pause, does);
        text.getDocument().addDocumentListener(listening);
        return listening;
    }

    /** Whether something has been typed that is still waited for. */
    public boolean waiting() {
        return timer.isRunning();
    }

    /** Waits no longer. */
    public void stop() {
        timer.stop();
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        timer.restart();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        timer.restart();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // only the dress of the text has changed
    }
}
