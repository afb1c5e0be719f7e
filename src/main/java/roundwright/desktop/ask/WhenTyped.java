package roundwright.desktop.ask;

import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Does something when nothing has been typed into a text for a moment. */
public final class WhenTyped {
    private final Timer timer;

    private WhenTyped(int pause, Runnable does) {
        timer = new Timer(pause, event -> does.run());
        timer.setRepeats(false);
    }

    /** Listens to a text; the pause is in milliseconds. */
    public static WhenTyped into(JTextComponent text, int pause, Runnable does) {
        WhenTyped listening = new WhenTyped(pause, does);
        atOnce(text, listening.timer::restart);
        return listening;
    }

    /** Does something at every change of a text, without waiting. */
    public static void atOnce(JTextComponent text, Runnable does) {
        text.getDocument().addDocumentListener(new Changes(does));
    }

    /** Whether something has been typed that is still waited for. */
    public boolean waiting() {
        return timer.isRunning();
    }

    /** Waits no longer. */
    public void stop() {
        timer.stop();
    }

    private record Changes(Runnable does) implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            does.run();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            does.run();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            // only the dress of the text has changed
        }
    }
}
